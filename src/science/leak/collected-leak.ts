import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'
import { autocorrelationCorrection } from '../statistics/autocorrelation-correction.ts'
import { fitLine } from '../statistics/fit-line.ts'
import { fitSettling } from '../statistics/fit-settling.ts'
import { smallestStep } from '../statistics/smallest-step.ts'
import { studentTQuantile } from '../statistics/student-t-quantile.ts'
import { theilSen } from '../statistics/theil-sen.ts'
import { judgeSettling } from './judge-settling.ts'
import { type MassReading, setAsideKnocks } from './set-aside-knocks.ts'

/** Leakage that grew more, or less, at first: rate = steady + extraG / timeConstantS at the start. */
export interface RunIn {
  readonly timeConstantS: number
  /** What was collected beside the steady leakage, all in all; below 0 where less was. */
  readonly extraG: number
}

export interface CollectedLeak {
  /** Null where the run-in had not come to its end: then no number is honest. */
  readonly steadyGPerS: number | null
  /** Null there too, and with two readings, which any line fits. */
  readonly confidence95GPerS: readonly [number, number] | null
  readonly runIn: RunIn | null
  /** From when the rate is within 5 % of the steady one; null where that is not reached. */
  readonly steadyFromS: number | null
  readonly setAside: readonly MassReading[]
  readonly cautions: readonly CollectedCaution[]
}

export const collectedCautions = [
  'still-running-in',
  'mass-falls',
  'knocks',
  'few-readings',
] as const
export type CollectedCaution = (typeof collectedCautions)[number]

const name = 'collectedLeak'
/** Below it a run-in can't be told from a line. */
const fewest = 6
/** Below it the ranks of the slopes say too little of the interval. */
const fewForRanks = 10
/** More than this are averaged in blocks before pairs of them are looked at. */
const mostPaired = 1000

/**
 * Gives the steady leakage from a mass that is collected on a balance, with the run-in taken out.
 *
 * mass = m0 + q t + extra (1 - exp(-t / tau)), against a straight line, as judgeSettling does.
 * Without a run-in: the median of the slopes of all pairs, its interval by ranks (below ten readings
 * by Student's t about the line). With one that is over, window >= 3 tau: q of the curve, by Student's
 * t. Both intervals are widened by the root of what autocorrelation costs. Steady from
 * tau ln(extra / (0.05 tau q)).
 *
 * @param readings two or more, up to 100 000, times rising, in s and g
 * @returns g per s; s
 * @throws RangeError outside these ranges
 * Validity: noise of the balance. Evaporation from the cup, and liquid that stays in the collecting
 *   path, are in the mass. Fluctuations of the leak itself add up in it: they show as autocorrelation,
 *   and widen the interval.
 * Source: theilSen, fitSettling and judgeSettling; checked against a built run-in.
 * @example collectedLeak([0, 1800, 3600].map((timeS) => ({ timeS, massG: timeS / 1000 })))
 *   .steadyGPerS // 0.001000
 */
export function collectedLeak(readings: readonly MassReading[]): CollectedLeak {
  requireWhole(name, 'count of readings', readings.length, { from: 2, to: 100_000 })
  readings.forEach(({ timeS, massG }, i) => {
    requireFinite(name, 'timeS', timeS)
    requireFinite(name, 'massG', massG)
    if (i > 0 && timeS <= (readings[i - 1] as MassReading).timeS) {
      throw new RangeError(`${name} requires rising times, got ${timeS}`)
    }
  })
  const stepG = smallestStep(readings.map((one) => one.massG))
  const { kept, setAside } = setAsideKnocks(readings, stepG)
  const steady = steadyOf(kept, stepG)
  const { steadyGPerS } = steady
  return {
    ...steady,
    setAside,
    cautions: [
      ...(steadyGPerS === null ? (['still-running-in'] as const) : []),
      ...(falls(kept, steadyGPerS) ? (['mass-falls'] as const) : []),
      ...(setAside.length > 0 ? (['knocks'] as const) : []),
      ...(readings.length < fewest ? (['few-readings'] as const) : []),
    ],
  }
}

type Steady = Omit<CollectedLeak, 'setAside' | 'cautions'>

function steadyOf(readings: readonly MassReading[], stepG: number): Steady {
  const timesS = readings.map((one) => one.timeS)
  const values = readings.map((one) => one.massG)
  if (readings.length < fewest) return lineOf(timesS, values)
  const verdict = judgeSettling({ timesS, values, stepVariance: stepG ** 2 / 12 })
  if (verdict.settling === 'settled') return lineOf(timesS, values)
  const { timeConstantS, amplitude } = fitSettling({ timesS, values })
  const runIn = { timeConstantS, extraG: 0 - amplitude }
  if (verdict.settling === 'unsettled') {
    return { steadyGPerS: null, confidence95GPerS: null, runIn, steadyFromS: null }
  }
  const q = 0 - verdict.fallPerS
  const { standardUncertaintyPerS, degreesOfFreedom } = verdict
  const half = studentTQuantile({ probability: 0.975, degreesOfFreedom }) * standardUncertaintyPerS
  return {
    steadyGPerS: q,
    confidence95GPerS: [q - half, q + half],
    runIn,
    steadyFromS: steadyFrom(timesS[0] as number, runIn, q),
  }
}

/** Never, where nothing steady remains. */
function steadyFrom(firstS: number, { timeConstantS, extraG }: RunIn, q: number): number | null {
  if (q === 0) return null
  const beyond = Math.abs(extraG / (timeConstantS * 0.05 * q))
  return firstS + timeConstantS * Math.max(0, Math.log(beyond))
}

function lineOf(timesS: readonly number[], values: readonly number[]): Steady {
  const { x, y } = blocks(timesS, values)
  const { slope, slopeInterval } = theilSen({ x, y })
  const [first] = timesS
  const steady = { steadyGPerS: slope, runIn: null, steadyFromS: first as number }
  if (x.length < 3) return { ...steady, confidence95GPerS: null }
  const line = fitLine({ x, y })
  const { varianceInflation, effectiveCount } = autocorrelationCorrection({
    residuals: line.residuals,
    biasTerms: 1,
  })
  if (x.length < fewForRanks) {
    const degreesOfFreedom = x.length - 2
    const half =
      studentTQuantile({ probability: 0.975, degreesOfFreedom }) * line.slopeStandardError
    return { ...steady, confidence95GPerS: [slope - half, slope + half] }
  }
  // The ranks know only independent noise: fewer readings in effect, and Student's t for their count.
  const degreesOfFreedom = Math.max(1, effectiveCount - 2)
  const factor =
    (Math.sqrt(varianceInflation) * studentTQuantile({ probability: 0.975, degreesOfFreedom })) /
    studentTQuantile({ probability: 0.975, degreesOfFreedom: x.length - 2 })
  return {
    ...steady,
    confidence95GPerS: [
      slope - factor * (slope - slopeInterval[0]),
      slope + factor * (slopeInterval[1] - slope),
    ],
  }
}

/** Means of blocks of neighbours, where there are too many for all pairs. */
function blocks(x: readonly number[], y: readonly number[]) {
  const size = Math.ceil(x.length / mostPaired)
  if (size === 1) return { x, y }
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length
  const starts = Array.from({ length: Math.ceil(x.length / size) }, (_, i) => i * size)
  return {
    x: starts.map((from) => mean(x.slice(from, from + size))),
    y: starts.map((from) => mean(y.slice(from, from + size))),
  }
}

/** A cup loses nothing by itself: evaporation, a hand, or a knock. */
function falls(readings: readonly MassReading[], steadyGPerS: number | null): boolean {
  if (steadyGPerS !== null && steadyGPerS < 0) return true
  const [first, last] = [readings[0] as MassReading, readings.at(-1) as MassReading]
  return last.massG < first.massG
}
