import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'
import { autocorrelationCorrection } from '../statistics/autocorrelation-correction.ts'
import { fitLine } from '../statistics/fit-line.ts'
import { fitSettling } from '../statistics/fit-settling.ts'
import { smallestStep } from '../statistics/smallest-step.ts'
import { studentTQuantile } from '../statistics/student-t-quantile.ts'
import { theilSen } from '../statistics/theil-sen.ts'
import { judgeSettling } from './judge-settling.ts'
import { readingNoise } from './reading-noise.ts'
import { type MassReading, setAsideKnocks } from './set-aside-knocks.ts'

/** Leakage that grew more, or less, at first: rate = steady + extraG / timeConstantS at the start. */
export interface RunIn {
  readonly timeConstantS: number
  /** What was collected beside the steady leakage, all in all; below 0 where less was. */
  readonly extraG: number
}

export interface CollectedLeak {
  /** Null where no number is honest: the cautions say why. */
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
  'not-steady',
  'mass-falls',
  'knocks',
  'few-readings',
  'times-uneven',
] as const
export type CollectedCaution = (typeof collectedCautions)[number]

const name = 'collectedLeak'
/** Below it a run-in can't be told from a line. */
const fewest = 6
/** Below it the ranks of the slopes say too little of the interval. */
const fewForRanks = 10
/** More than this are averaged in blocks before pairs of them are looked at. */
const mostPaired = 1000
/** More than this are averaged in blocks before anything is fitted. */
const mostFitted = 2000
/** Rates of both halves that differ by so much of the whole, and beyond their noise, are not one. */
const mostChange = 0.2
const timesNoise = 5
/** A fall between neighbours by more than so many times their noise is none of it, in any count. */
const fallNoise = 8 * Math.SQRT2

/**
 * Gives the steady leakage from a mass that is collected on a balance, with the run-in taken out.
 *
 * mass = m0 + q t + extra (1 - exp(-t / tau)), against a straight line, as judgeSettling does.
 * Without a run-in: the median of the slopes of all pairs, its interval by ranks (below ten readings
 * by Student's t about the line). With one that is over, window >= 3 tau: q of the curve, by Student's
 * t. Both intervals are widened by the root of what autocorrelation costs. Steady from
 * tau ln(extra / (0.05 tau q)). No rate is given where those of both halves differ by a fifth and by
 * five times what the noise of the readings explains, and where the mass falls from one to the next.
 *
 * @param readings two or more, up to 1 000 000, times rising, in s and g
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
  requireWhole(name, 'count of readings', readings.length, { from: 2, to: 1_000_000 })
  readings.forEach(({ timeS, massG }, i) => {
    requireFinite(name, 'timeS', timeS)
    requireFinite(name, 'massG', massG)
    if (i > 0 && timeS <= (readings[i - 1] as MassReading).timeS) {
      throw new RangeError(`${name} requires rising times, got ${timeS}`)
    }
  })
  const stepG = smallestStep(readings.map((one) => one.massG))
  const { kept, setAside } = setAsideKnocks(readings, stepG)
  const noiseG = Math.max(stepG, readingNoise(kept.map((one) => one.massG)))
  const isEmptied = kept.some(
    (one, i) => i > 0 && one.massG < (kept[i - 1] as MassReading).massG - fallNoise * noiseG,
  )
  const { steady, why } = isEmptied
    ? notTold('mass-falls')
    : steadyOf(blocks(kept, mostFitted), stepG)
  const isFalling = isEmptied || falls(kept, steady.steadyGPerS)
  return {
    ...steady,
    setAside,
    cautions: [
      ...(why === null || why === 'mass-falls' ? [] : [why]),
      ...(isFalling ? (['mass-falls'] as const) : []),
      ...(setAside.length > 0 ? (['knocks'] as const) : []),
      ...(readings.length < fewest ? (['few-readings'] as const) : []),
    ],
  }
}

type Steady = Omit<CollectedLeak, 'setAside' | 'cautions'>

/** The rate, or why there is none. */
type Told = { readonly steady: Steady; readonly why: CollectedCaution | null }

function notTold(why: CollectedCaution, runIn: RunIn | null = null): Told {
  return { steady: { steadyGPerS: null, confidence95GPerS: null, runIn, steadyFromS: null }, why }
}

function steadyOf(readings: readonly MassReading[], stepG: number): Told {
  try {
    return rateOf(readings, stepG)
  } catch (error) {
    // Times so uneven that no fit can be told from another.
    if (error instanceof RangeError) return notTold('times-uneven')
    throw error
  }
}

function rateOf(readings: readonly MassReading[], stepG: number): Told {
  const timesS = readings.map((one) => one.timeS)
  const values = readings.map((one) => one.massG)
  const line = () => told(lineOf(readings))
  if (readings.length < fewest) return line()
  const verdict = judgeSettling({ timesS, values, stepVariance: stepG ** 2 / 12 })
  if (verdict.settling === 'settled')
    return changes(readings, stepG) ? notTold('not-steady') : line()
  const { timeConstantS, amplitude } = fitSettling({ timesS, values })
  const runIn = { timeConstantS, extraG: 0 - amplitude }
  if (verdict.settling === 'unsettled') return notTold('still-running-in', runIn)
  const q = 0 - verdict.fallPerS
  const { standardUncertaintyPerS, degreesOfFreedom } = verdict
  const half = studentTQuantile({ probability: 0.975, degreesOfFreedom }) * standardUncertaintyPerS
  return told({
    steadyGPerS: q,
    confidence95GPerS: [q - half, q + half],
    runIn,
    steadyFromS: steadyFrom(timesS, runIn, q),
  })
}

/** A rate beyond all numbers is none. */
function told(steady: Steady): Told {
  return Number.isFinite(steady.steadyGPerS) ? { steady, why: null } : notTold('times-uneven')
}

/** Whether the rate of the second half is another one than that of the first. */
function changes(readings: readonly MassReading[], stepG: number): boolean {
  const middle = Math.floor(readings.length / 2)
  const noiseG = Math.max(readingNoise(readings.map((one) => one.massG)), stepG / Math.sqrt(12))
  const [first, second, whole] = [readings.slice(0, middle), readings.slice(middle), readings].map(
    (part) => fitLine({ x: part.map((one) => one.timeS), y: part.map((one) => one.massG) }),
  )
  if (first === undefined || second === undefined || whole === undefined) return false
  const apart = Math.abs(second.slope - first.slope)
  const byNoise = noiseG * Math.hypot(first.slopePerNoise, second.slopePerNoise)
  return apart > mostChange * Math.abs(whole.slope) && apart > timesNoise * byNoise
}

/** Never, where nothing steady remains, or the readings end before it. */
function steadyFrom(timesS: readonly number[], of: RunIn, q: number): number | null {
  if (q === 0) return null
  const { timeConstantS, extraG } = of
  const beyond = Math.abs(extraG / (timeConstantS * 0.05 * q))
  const from = (timesS[0] as number) + timeConstantS * Math.max(0, Math.log(beyond))
  return from <= (timesS.at(-1) as number) ? from : null
}

function lineOf(readings: readonly MassReading[]): Steady {
  const paired = blocks(readings, mostPaired)
  const x = paired.map((one) => one.timeS)
  const y = paired.map((one) => one.massG)
  const { slope, slopeInterval } = theilSen({ x, y })
  const steady = {
    steadyGPerS: slope,
    runIn: null,
    steadyFromS: (readings[0] as MassReading).timeS,
  }
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

/** Means of blocks of neighbours, where there are more than so many. */
function blocks(readings: readonly MassReading[], most: number): readonly MassReading[] {
  const size = Math.ceil(readings.length / most)
  if (size === 1) return readings
  const mean = (part: readonly MassReading[], of: (one: MassReading) => number) =>
    part.reduce((sum, one) => sum + of(one), 0) / part.length
  return Array.from({ length: Math.ceil(readings.length / size) }, (_, i) => {
    const part = readings.slice(i * size, (i + 1) * size)
    return { timeS: mean(part, (one) => one.timeS), massG: mean(part, (one) => one.massG) }
  })
}

/** A cup loses nothing by itself: evaporation, a hand, or a knock. */
function falls(readings: readonly MassReading[], steadyGPerS: number | null): boolean {
  if (steadyGPerS !== null && steadyGPerS < 0) return true
  const [first, last] = [readings[0] as MassReading, readings.at(-1) as MassReading]
  return last.massG < first.massG
}
