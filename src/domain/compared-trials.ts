import { coverageProbability } from '../science/uncertainty/coverage-probability.ts'
import type { MonteCarloResult } from '../science/uncertainty/monte-carlo.ts'
import { type LinearValidation, validateLinear } from '../science/uncertainty/validate-linear.ts'
import { printedUnit } from './printed-unit.ts'
import type { ShownResult } from './shown-result.ts'
import type { Uncertainty } from './uncertainty.ts'

/** How many trials a button offers: what JCGM 101:2008, 7.2.2 expects to be enough. */
export const offeredTrialCount = 1_000_000

/** Trials beside the budget of the same result, all in the unit that its kind is printed in. */
export type ComparedTrials = {
  readonly run: MonteCarloResult
  readonly linear: {
    readonly value: number
    readonly standardUncertainty: number
    readonly expandedUncertainty: number
  }
  readonly validation: LinearValidation
}

/**
 * The probability that an expanded uncertainty stands for: its factor decides, so that trials are
 * asked about the same share of the values.
 */
export function probabilityOf(
  uncertainty: Pick<Uncertainty, 'coverageFactor' | 'effectiveDegreesOfFreedom'>,
): number {
  const { coverageFactor, effectiveDegreesOfFreedom } = uncertainty
  const probability = coverageProbability({
    coverageFactor,
    effectiveDegreesOfFreedom: effectiveDegreesOfFreedom ?? Number.POSITIVE_INFINITY,
  })
  return Math.min(0.9999, probability)
}

/**
 * Holds trials of a result's model against its budget, JCGM 101:2008, clause 8. The symmetric
 * interval is compared: the shortest one wanders from run to run.
 * @param value and uncertainty in the stored unit of the characteristic, as the model gives them
 */
export function compareTrials(
  of: {
    readonly characteristic: ShownResult['characteristic']
    readonly value: number
    readonly uncertainty: Pick<Uncertainty, 'standardUncertainty' | 'expandedUncertainty'>
  },
  stored: MonteCarloResult,
): ComparedTrials {
  const { storedPerPrinted: per } = printedUnit[of.characteristic]
  const linear = {
    value: of.value / per,
    standardUncertainty: of.uncertainty.standardUncertainty / per,
    expandedUncertainty: of.uncertainty.expandedUncertainty / per,
  }
  const run = inUnit(stored, per)
  const [low, high] = run.symmetricInterval
  const { value, expandedUncertainty } = linear
  const standardUncertainty = run.standardDeviation
  const validation = validateLinear({ value, expandedUncertainty, standardUncertainty, low, high })
  return { run, linear, validation }
}

function inUnit(trials: MonteCarloResult, per: number): MonteCarloResult {
  const pair = ([low, high]: readonly [number, number]) => [low / per, high / per] as const
  const { histogram } = trials
  return {
    ...trials,
    mean: trials.mean / per,
    standardDeviation: trials.standardDeviation / per,
    symmetricInterval: pair(trials.symmetricInterval),
    shortestInterval: pair(trials.shortestInterval),
    histogram: { ...histogram, from: histogram.from / per, to: histogram.to / per },
  }
}
