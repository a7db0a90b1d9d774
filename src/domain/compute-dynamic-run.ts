import { type CollectedLeak, collectedLeak } from '../science/leak/collected-leak.ts'
import { theilSen } from '../science/statistics/theil-sen.ts'
import { type TimeEvent, timeBase } from '../science/traces/time-base.ts'
import { type RunChannel, type RunSample, runChannels } from './dynamic-run.ts'
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
  /** In the order of time, of one clock; those of a clock that was set later on are left out. */
  readonly samples: readonly RunSample[]
  readonly leftOutCount: number
  readonly events: readonly TimeEvent[]
  readonly channels: readonly ChannelSummary[]
  /** Of the mass that was collected; null with fewer than two weighings. */
  readonly leak: CollectedLeak | null
  readonly steadyMlPerH: number | null
  readonly cautions: readonly RunCaution[]
  readonly method: string
}

/** A torque that rises by so much of its mean, or a temperature by so many kelvin, climbs. */
const climbs = { torqueNm: { share: 0.1, least: 0 }, faceTemperatureC: { share: 0, least: 5 } }
const mostPaired = 500

/**
 * What the readings of a run say, brought into the order of time: the longest stretch of one clock.
 * Leakage that is none while torque or temperature climbs is no good news: the film may be missing.
 */
export function computeDynamicRun(
  sent: readonly RunSample[],
  densityKgPerM3: number | null,
): ComputedRun | null {
  if (sent.length === 0) return null
  const base = timeBase({
    timesS: sent.map((one) => one.timeS),
    values: sent.map((one) => firstValue(one)),
  })
  const longest = base.segments.reduce((a, b) => (b.length > a.length ? b : a))
  const samples = longest.map((index) => sent[index] as RunSample)
  const weighed = samples.flatMap(({ timeS, massG }) =>
    massG === undefined ? [] : [{ timeS, massG }],
  )
  const leak = weighed.length < 2 ? null : collectedLeak(weighed)
  const gPerS = leak?.steadyGPerS ?? null
  const isHot =
    isNone(leak) && (isClimbing(samples, 'torqueNm') || isClimbing(samples, 'faceTemperatureC'))
  return {
    samples,
    leftOutCount: base.segments.reduce((sum, one) => sum + one.length, 0) - longest.length,
    events: base.events,
    channels: runChannels.flatMap((channel) => summaryOf(samples, channel)),
    leak,
    steadyMlPerH:
      gPerS === null || densityKgPerM3 === null ? null : (gPerS * 3600 * 1000) / densityKgPerM3,
    cautions: [
      ...(isHot ? (['no-leak-while-heating'] as const) : []),
      ...(base.segments.length > 1 ? (['clock-was-set'] as const) : []),
    ],
    method: methods.dynamicRun,
  }
}

function firstValue(sample: RunSample): number {
  const channel = runChannels.find((one) => sample[one] !== undefined)
  return channel === undefined ? 0 : (sample[channel] as number)
}

/** None that can be told: its interval holds 0. */
function isNone(leak: CollectedLeak | null): boolean {
  const interval = leak?.confidence95GPerS ?? null
  return interval !== null && interval[0] <= 0
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
