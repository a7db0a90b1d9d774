import { type CollectedLeak, collectedLeak } from '../science/leak/collected-leak.ts'
import { readingNoise } from '../science/leak/reading-noise.ts'
import type { MassReading } from '../science/leak/set-aside-knocks.ts'
import { smallestStep } from '../science/statistics/smallest-step.ts'
import { theilSen } from '../science/statistics/theil-sen.ts'
import { type CollectedPerHour, collectedPerHour } from './collected-per-hour.ts'
import { type RunChannel, type RunSample, runChannels } from './dynamic-run.ts'
import { type MergedRun, mergeRunSamples } from './merge-run-samples.ts'
import { methods } from './methods.ts'

/** What to know about a run beside its figures. */
export const runCautions = ['no-leak-while-heating', 'clock-was-set'] as const
export type RunCaution = (typeof runCautions)[number]

export type ChannelSummary = {
  readonly channel: RunChannel
  readonly readingCount: number
  readonly mean: number
  readonly least: number
  readonly most: number
  readonly last: number
}

export type ComputedRun = {
  /** In the order of time. */
  readonly samples: readonly RunSample[]
  readonly oddities: MergedRun['oddities']
  readonly channels: readonly ChannelSummary[]
  /** Of the mass that was collected; null with fewer than two weighings. */
  readonly leak: (CollectedLeak & CollectedPerHour) | null
  readonly cautions: readonly RunCaution[]
  readonly method: string
}

/** A torque that rises by so much of its mean, or a temperature by so many kelvin, climbs. */
const climbs = { torqueNm: { share: 0.1, least: 0 }, faceTemperatureC: { share: 0, least: 5 } }
const mostPaired = 500

/**
 * What the readings of a run say, brought into the order of time. Leakage that is none while torque or
 * temperature climbs is no good news: the film may be missing.
 * @param batches as they came
 */
export function computeDynamicRun(
  batches: readonly (readonly RunSample[])[],
  densityKgPerM3: number | null,
): ComputedRun | null {
  const { samples, oddities } = mergeRunSamples(batches)
  if (samples.length === 0) return null
  const weighed = samples.flatMap(({ timeS, massG }) =>
    massG === undefined ? [] : [{ timeS, massG }],
  )
  const isHot = isClimbing(samples, 'torqueNm') || isClimbing(samples, 'faceTemperatureC')
  return {
    samples,
    oddities,
    channels: runChannels.flatMap((channel) => summaryOf(samples, channel)),
    leak: weighed.length < 2 ? null : leakOf(weighed, densityKgPerM3),
    cautions: [
      ...(isHot && isNone(weighed) ? (['no-leak-while-heating'] as const) : []),
      ...(oddities['clock-back'] === undefined ? [] : (['clock-was-set'] as const)),
    ],
    method: methods.dynamicRun,
  }
}

function leakOf(weighed: readonly MassReading[], densityKgPerM3: number | null) {
  const leak = collectedLeak(weighed)
  return { ...leak, ...collectedPerHour(leak, densityKgPerM3) }
}

/** Weighings that end where they began, as far as the balance can tell: not merely none that is sure. */
function isNone(weighed: readonly { readonly massG: number }[]): boolean {
  const masses = weighed.map((one) => one.massG)
  if (masses.length < 6) return false
  const gained = (masses.at(-1) as number) - (masses[0] as number)
  return Math.abs(gained) <= 3 * Math.max(smallestStep(masses), readingNoise(masses))
}

function isClimbing(samples: readonly RunSample[], channel: keyof typeof climbs): boolean {
  const read = samples.flatMap((one) => (one[channel] === undefined ? [] : [one]))
  if (read.length < 10) return false
  const step = Math.ceil(read.length / mostPaired)
  const thinned = read.filter((_, i) => i % step === 0)
  const x = thinned.map((one) => one.timeS)
  const y = thinned.map((one) => one[channel] as number)
  const { slope, slopeInterval } = theilSen({ x, y })
  const rise = slope * ((x.at(-1) as number) - (x[0] as number))
  const mean = y.reduce((a, b) => a + b, 0) / y.length
  const { share, least } = climbs[channel]
  return slopeInterval[0] > 0 && rise > Math.max(least, share * Math.abs(mean))
}

function summaryOf(samples: readonly RunSample[], channel: RunChannel): readonly ChannelSummary[] {
  const values = samples.flatMap((one) => one[channel] ?? [])
  if (values.length === 0) return []
  return [
    {
      channel,
      readingCount: values.length,
      mean: values.reduce((a, b) => a + b, 0) / values.length,
      least: values.reduce((a, b) => Math.min(a, b)),
      most: values.reduce((a, b) => Math.max(a, b)),
      last: values.at(-1) as number,
    },
  ]
}
