import { requireWhole } from '../check/require-whole.ts'
import { coverageIntervals, type Interval } from './coverage-intervals.ts'
import { blockEvaluator, blockLength } from './expression/block-evaluator.ts'
import { ModelFault } from './expression/model-fault.ts'
import { parseExpression } from './expression/parse-expression.ts'
import type { MeasurementModel } from './measurement-model.ts'
import { sampleQuantity } from './sample-quantity.ts'
import { seededGenerator } from './seeded-generator.ts'

export const monteCarloTrials = { from: 1000, to: 5_000_000 } as const

/** A result's distribution by trials. */
export interface MonteCarloResult {
  readonly mean: number
  readonly standardDeviation: number
  readonly symmetricInterval: Interval
  readonly shortestInterval: Interval
  readonly probability: number
  readonly trials: number
  readonly seed: number
  /** Counts in bins of equal width; a thousandth of the trials on each side lies outside. */
  readonly histogram: {
    readonly from: number
    readonly to: number
    readonly counts: readonly number[]
  }
}

const binCount = 60

/**
 * Evaluates a measurement model by propagation of distributions: as many results as trials, each
 * from one draw of every quantity.
 *
 * mean and standard deviation of the results; coverage intervals from their order
 *
 * @param model expression and quantities, which are independent of each other
 * @param options trials: whole, from 1000 to 5 000 000; seed: whole, from 0 to 2^32 - 1;
 *   probability of the intervals, from 0.01 to 0.9999
 * @returns mean, standard deviation, both intervals, and a histogram; the same for the same seed
 * @throws RangeError outside these ranges; ModelFault where the expression can't be read, a name
 *   has no quantity, or trials, their mean or deviation are not finite
 * Validity: u of the mean is standardDeviation / sqrt(trials). 10^6 trials give an interval of 95 %
 *   to one or two digits of u.
 * Source: JCGM 101:2008, clause 7.
 * @example monteCarlo({ expression: 'x', quantities: [{ name: 'x', value: 3, distribution:
 *   'rectangular', standardUncertainty: 0, degreesOfFreedom: null }] }, { trials: 1000, seed: 1,
 *   probability: 0.95 }).mean // 3
 */
export function monteCarlo(
  model: MeasurementModel,
  options: { readonly trials: number; readonly seed: number; readonly probability: number },
): MonteCarloResult {
  const { trials, seed, probability } = options
  requireWhole('monteCarlo', 'trials', trials, monteCarloTrials)
  const results = draw(model, trials, seed)
  const mean = sum(results, (y) => y) / trials
  const squares = sum(results, (y) => (y - mean) * (y - mean))
  // Results may be finite where their sum or their squares no longer are.
  if (!Number.isFinite(squares)) throw new ModelFault('not-finite', 0)
  results.sort()
  const { symmetric, shortest } = coverageIntervals(results, probability)
  return {
    mean,
    standardDeviation: Math.sqrt(squares / (trials - 1)),
    symmetricInterval: symmetric,
    shortestInterval: shortest,
    probability,
    trials,
    seed,
    histogram: histogramOf(results),
  }
}

function draw(model: MeasurementModel, trials: number, seed: number): Float64Array {
  const uniform = seededGenerator(seed)
  const sampled = model.quantities.map((quantity) => {
    return { quantity, block: new Float64Array(blockLength) }
  })
  const blocks = new Map(sampled.map(({ quantity, block }) => [quantity.name, block]))
  const evaluate = blockEvaluator(parseExpression(model.expression), blocks)
  const results = new Float64Array(trials)
  let failed = 0
  for (let from = 0; from < trials; from += blockLength) {
    for (const { quantity, block } of sampled) sampleQuantity(quantity, uniform, block)
    const block = evaluate()
    const count = Math.min(blockLength, trials - from)
    for (let i = 0; i < count; i++) {
      const y = block[i] as number
      if (!Number.isFinite(y)) failed++
      results[from + i] = y
    }
  }
  if (failed > 0) throw new ModelFault('not-finite', failed)
  return results
}

/** Adds with what is lost to rounding carried along (Kahan). */
function sum(values: Float64Array, of: (y: number) => number): number {
  let total = 0
  let lost = 0
  for (let i = 0; i < values.length; i++) {
    const term = of(values[i] as number) - lost
    const next = total + term
    lost = next - total - term
    total = next
  }
  return total
}

function histogramOf(sorted: Float64Array): MonteCarloResult['histogram'] {
  const outside = Math.floor(sorted.length / 1000)
  const from = sorted[outside] as number
  const to = sorted[sorted.length - 1 - outside] as number
  const counts = new Array<number>(binCount).fill(0)
  const width = (to - from) / binCount
  for (let i = outside; i < sorted.length - outside; i++) {
    const bin = width === 0 ? 0 : Math.floor(((sorted[i] as number) - from) / width)
    const at = Math.min(binCount - 1, bin)
    counts[at] = (counts[at] ?? 0) + 1
  }
  return { from, to, counts }
}
