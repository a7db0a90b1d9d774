import { dynamicRunBounds, type RunSample, runChannelBounds, runChannels } from './dynamic-run.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'

/** Reads a batch of readings of a rig, in the order in which they were read. */
export function parseRunSamples(input: Input): Parsed<readonly RunSample[]> {
  const fields = openFields(input)
  fields.only('samples')
  return fields.finish(readRunSamples(fields, 'samples'))
}

/** The same, of a field of something larger. */
export function readRunSamples(fields: Fields, name: string): readonly RunSample[] {
  return fields.list(name, dynamicRunBounds.sampleCount).map((part) => {
    part.only('timeS', ...runChannels)
    const timeS = part.decimal('timeS', dynamicRunBounds.timeS)
    const read = runChannels.flatMap((channel) => {
      const value = part.optionalDecimal(channel, runChannelBounds[channel])
      return value === null ? [] : [[channel, value] as const]
    })
    if (read.length === 0) part.fault('timeS', 'no-channel', { choices: runChannels.join(', ') })
    return { timeS, ...Object.fromEntries(read) }
  })
}
