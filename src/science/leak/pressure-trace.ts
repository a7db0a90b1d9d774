import { mean } from 'simple-statistics'
import { requireRange } from '../check/require-range.ts'
import { fitLine } from '../statistics/fit-line.ts'
import { smallestStep } from '../statistics/smallest-step.ts'
import { combinedStandardUncertainty } from '../uncertainty/combined-standard-uncertainty.ts'
import { type LeakInputUncertainties, leakUncertainty } from '../uncertainty/leak-uncertainty.ts'
import { type TraceFit, traceLeakBudget } from '../uncertainty/trace-leak-budget.ts'
import { exactFactors } from '../units/exact-factors.ts'
import { throughputUnits } from '../units/throughput-units.ts'
import { compensatedPressuresKPa } from './compensated-pressures-kpa.ts'
import { judgeSettling, requiredTimeConstants } from './judge-settling.ts'
import type { PressureChange } from './pressure-change.ts'
import type { TraceSample } from './require-trace.ts'
import { smallestDetectableLeak } from './smallest-detectable-leak.ts'

/** What a trace tells: a leak, or that the hold was too short for one. */
export type PressureTrace =
  | (PressureChange & { readonly settling: 'settled' })
  | (PressureChange & { readonly settling: 'corrected'; readonly timeConstantS: number })
  | {
      readonly settling: 'unsettled'
      readonly advice: 'extend-the-hold'
      readonly pressureDropKPa: number
      readonly timeConstantS: number
      readonly windowS: number
      readonly neededWindowS: number
    }

interface TraceInput {
  readonly volumeL: number
  readonly referenceTemperatureC: number
  readonly trace: readonly TraceSample[]
}

const growsWithLeak = ['volume', 'elapsed-time']

/** How strongly 1 K moves each compensated pressure: p Tref / T^2, in kPa/K. */
function kPaPerKelvin(input: TraceInput, compensatedKPa: readonly number[]): number {
  const zeroK = exactFactors.celsiusZero.value
  return mean(
    input.trace.map((sample, index) => {
      const temperatureC = sample.temperatureC ?? input.referenceTemperatureC
      return (compensatedKPa[index] as number) / (temperatureC + zeroK)
    }),
  )
}

/**
 * Least variance of a compensated pressure: a reading lies anywhere within its display's step, the
 * one stated or the one seen, whichever is coarser.
 */
function displayVariance(
  input: TraceInput,
  kPaPerK: number,
  { resolutionPa = 0, resolutionK = 0 }: LeakInputUncertainties,
): number {
  requireRange('pressureTrace', 'resolutionPa', resolutionPa, { from: 0, to: 1e9 })
  requireRange('pressureTrace', 'resolutionK', resolutionK, { from: 0, to: 1000 })
  const temperatures = input.trace.flatMap((sample) => sample.temperatureC ?? [])
  const seenStepKPa = smallestStep(input.trace.map((sample) => sample.pressureKPaAbs))
  const pressureStep = Math.max(seenStepKPa, resolutionPa / 1000)
  const temperatureStep = Math.max(smallestStep(temperatures), resolutionK) * kPaPerK
  return (pressureStep ** 2 + temperatureStep ** 2) / 12
}

/** How well the fall is known from the readings' own scatter. */
function seenFall(verdict: {
  readonly standardUncertaintyPerS: number
  readonly degreesOfFreedom: number
}): TraceFit['fall'] {
  return {
    standardUncertaintyKPaPerS: verdict.standardUncertaintyPerS,
    degreesOfFreedom: verdict.degreesOfFreedom,
  }
}

/** A display that stands still tells as much as its first and last reading: they share one step. */
function stillFall(stepVariance: number, windowS: number): TraceFit['fall'] {
  if (stepVariance === 0) return undefined
  return { standardUncertaintyKPaPerS: Math.sqrt(2 * stepVariance) / windowS }
}

/**
 * Gives the leak of a closed volume from a trace of its pressure, in the units of the trade, with
 * its uncertainty; or says that the pressure had not settled, and then gives no leak.
 *
 * Q = V x fall of p Tref / T, the fall and its uncertainty from judgeSettling; budget from
 * traceLeakBudget; smallest detectable 3.29 x the part of u that stays without a leak
 *
 * @param input volumeL V: from 1e-6 to 1e6; referenceTemperatureC: from -270 to 2000; trace: see
 *   requireTrace
 * @param uncertainties as twoPointLeakBudget; what is absent counts as exact. resolutionPa and
 *   resolutionK have no lines here: they are the least noise of a reading, and so part of the slope
 * @returns as pressureChange and settling: settled (straight line), corrected (settling taken out),
 *   or unsettled with the window needed; pressureDropKPa is first minus last reading;
 *   uncompensatedPaM3PerS is the straight-line fall of the pressures as read. When all readings are
 *   equal and nothing is known of the gauge, uncertainty and smallest detectable are absent: a
 *   display that never moved does not show its noise; with resolutionPa the leak is then known as
 *   from two readings
 * @throws RangeError outside these ranges
 * Validity: ideal gas, rigid volume, drop small beside the pressure that drives it. Without
 *   temperatures the gas is taken to have stayed at the reference temperature.
 * Source: as judgeSettling and traceLeakBudget.
 * @example pressureTrace({ volumeL: 2, referenceTemperatureC: 20, trace: [0, 1, 2, 3, 4, 5, 6,
 *   7].map((timeS) => ({ timeS, pressureKPaAbs: 300 - 0.01 * timeS })) }).leakPaM3PerS // 0.0200
 */
export function pressureTrace(
  input: TraceInput,
  uncertainties: LeakInputUncertainties = {},
): PressureTrace {
  const { volumeL, referenceTemperatureC, trace } = input
  requireRange('pressureTrace', 'volumeL', volumeL, { from: 1e-6, to: 1e6 })
  const values = compensatedPressuresKPa(input)
  const timesS = trace.map((sample) => sample.timeS)
  const pressures = trace.map((sample) => sample.pressureKPaAbs)
  const pressureDropKPa = (pressures[0] as number) - (pressures.at(-1) as number)
  const windowS = (timesS.at(-1) as number) - (timesS[0] as number)
  const kPaPerK = kPaPerKelvin(input, values)
  const stepVariance = displayVariance(input, kPaPerK, uncertainties)
  const verdict = judgeSettling({ timesS, values, stepVariance })
  if (verdict.settling === 'unsettled') {
    const neededWindowS = requiredTimeConstants * verdict.timeConstantS
    return { ...verdict, advice: 'extend-the-hold', pressureDropKPa, neededWindowS }
  }
  const leakPaM3PerS = volumeL * verdict.fallPerS
  const isNoiseSeen = values.some((value) => value !== values[0])
  const fall = isNoiseSeen ? seenFall(verdict) : stillFall(stepVariance, windowS)
  const lines = traceLeakBudget(
    { volumeL, leakPaM3PerS, windowS, kPaPerK, ...(fall && { fall }) },
    uncertainties,
  )
  const noise = lines.filter((line) => !growsWithLeak.includes(line.source))
  return {
    ...throughputUnits({ leakPaM3PerS, referenceTemperatureC }),
    pressureDropKPa,
    uncompensatedPaM3PerS: 0 - volumeL * fitLine({ x: timesS, y: pressures }).slope,
    ...(noise.length > 0 && {
      smallestDetectablePaM3PerS: smallestDetectableLeak(combinedStandardUncertainty(noise)),
    }),
    ...(lines.length > 0 && { uncertainty: leakUncertainty(lines) }),
    ...(verdict.settling === 'corrected'
      ? { settling: verdict.settling, timeConstantS: verdict.timeConstantS }
      : { settling: verdict.settling }),
  }
}
