import type { TraceSample } from '../science/leak/require-trace.ts'
import { fewestTraceSamples } from '../science/leak/require-trace.ts'
import type { LeakInputUncertainties } from '../science/uncertainty/leak-uncertainty.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'

export type PressureState = {
  readonly timeS: number
  readonly pressureKPaAbs: number
  readonly temperatureC: number
}

/** Two states, or a trace; never both. */
export type PressureChangeRequest = {
  readonly volumeL: number
  readonly referenceTemperatureC: number
  readonly ends: { readonly start: PressureState; readonly end: PressureState } | null
  readonly trace: readonly TraceSample[] | null
  readonly uncertainties: LeakInputUncertainties
}

export const pressureChangeFields = [
  'volumeL',
  'referenceTemperatureC',
  'start',
  'end',
  'trace',
  'uncertainties',
] as const

export const pressureChangeBounds = {
  volumeL: { min: 1e-6, max: 1e6 },
  temperatureC: { min: -270, max: 2000 },
  pressureKPaAbs: { min: 0, max: 1e6 },
  timeS: { min: -1e12, max: 1e12 },
  /** Between two readings: from one to the next, and from the first to the last. */
  elapsedS: { min: 1e-6, max: 1e9 },
  sampleCount: { min: fewestTraceSamples, max: 100_000 },
  uncertainty: { min: 0, max: 1000 },
  pressurePa: { min: 0, max: 1e9 },
  relative: { min: 0, max: 1 },
} as const

/** Reads a request for the leak rate of a closed volume. */
export function parsePressureChangeRequest(input: Input): Parsed<PressureChangeRequest> {
  const fields = openFields(input)
  fields.only(...pressureChangeFields)
  const { volumeL, temperatureC } = pressureChangeBounds
  const hasTrace = input.trace != null
  const hasEnds = input.start != null || input.end != null
  if (hasTrace && hasEnds) {
    fields.fault('trace', 'one-of-two', { one: 'start with end', other: 'trace' })
  }
  return fields.finish({
    volumeL: fields.decimal('volumeL', volumeL),
    referenceTemperatureC: fields.optionalDecimal('referenceTemperatureC', temperatureC) ?? 20,
    ends: hasTrace ? null : parseEnds(fields),
    trace: hasTrace ? parseTrace(fields) : null,
    uncertainties: input.uncertainties == null ? {} : parseUncertainties(fields),
  })
}

function parseEnds(fields: Fields) {
  const start = parseState(fields.group('start'))
  const endFields = fields.group('end')
  const end = parseState(endFields)
  if (fields.faults.length === 0) checkElapsed(endFields, end.timeS, start.timeS, start.timeS)
  return { start, end }
}

/** A time that follows another by next to nothing, or ends a hold of decades, is a slip. */
function checkElapsed(part: Fields, timeS: number, beforeS: number, firstS: number): void {
  const { min, max } = pressureChangeBounds.elapsedS
  if (timeS - beforeS < min) part.fault('timeS', 'not-later')
  else if (timeS - firstS > max) part.fault('timeS', 'above', { min: firstS, max: firstS + max })
}

function parseState(part: Fields): PressureState {
  part.only('timeS', 'pressureKPaAbs', 'temperatureC')
  return {
    timeS: part.decimal('timeS', pressureChangeBounds.timeS),
    pressureKPaAbs: part.decimal('pressureKPaAbs', pressureChangeBounds.pressureKPaAbs),
    temperatureC: part.decimal('temperatureC', pressureChangeBounds.temperatureC),
  }
}

function parseTrace(fields: Fields): readonly TraceSample[] {
  const { timeS, pressureKPaAbs, temperatureC, sampleCount } = pressureChangeBounds
  let firstS: number | null = null
  let beforeS = 0
  let temperatureCount = 0
  const parts = fields.list('trace', sampleCount)
  const samples = parts.map((part) => {
    part.only('timeS', 'pressureKPaAbs', 'temperatureC')
    const at = part.decimal('timeS', timeS)
    if (firstS !== null) checkElapsed(part, at, beforeS, firstS)
    firstS ??= at
    beforeS = at
    const kPa = part.decimal('pressureKPaAbs', pressureKPaAbs)
    const celsius = part.optionalDecimal('temperatureC', temperatureC)
    if (celsius === null) return { timeS: at, pressureKPaAbs: kPa }
    temperatureCount++
    return { timeS: at, pressureKPaAbs: kPa, temperatureC: celsius }
  })
  if (temperatureCount !== 0 && temperatureCount !== parts.length) {
    fields.fault('trace', 'all-or-none')
  }
  return samples
}

function parseUncertainties(fields: Fields): LeakInputUncertainties {
  const part = fields.group('uncertainties')
  const { uncertainty, pressurePa, relative } = pressureChangeBounds
  part.only('volumeRelative', 'pressurePa', 'resolutionPa', 'temperatureK', 'resolutionK', 'timeS')
  return {
    volumeRelative: part.optionalDecimal('volumeRelative', relative) ?? undefined,
    pressurePa: part.optionalDecimal('pressurePa', pressurePa) ?? undefined,
    resolutionPa: part.optionalDecimal('resolutionPa', pressurePa) ?? undefined,
    temperatureK: part.optionalDecimal('temperatureK', uncertainty) ?? undefined,
    resolutionK: part.optionalDecimal('resolutionK', uncertainty) ?? undefined,
    timeS: part.optionalDecimal('timeS', pressurePa) ?? undefined,
  }
}
