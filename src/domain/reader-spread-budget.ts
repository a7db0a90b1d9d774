import type { BandPattern } from './flatness.ts'
import type { FlatnessBudgetInput } from './flatness-budget-input.ts'
import type { ReaderSpread } from './reader-spreads.ts'

/**
 * Takes the spread of several readers as how far counts scatter. The reading that is recorded stays
 * one person's count, so it is the scatter of one; how well it is known follows from the number of
 * readers. A saddle is the sum of two counts, whose scatter is that of the sum over the root of two.
 */
export function readerSpreadBudget(
  entered: FlatnessBudgetInput,
  spread: Pick<ReaderSpread, 'standardDeviationUm' | 'degreesOfFreedom'>,
  reading: { readonly bandHeightUm: number; readonly pattern: BandPattern },
): FlatnessBudgetInput {
  const { standardDeviationUm, degreesOfFreedom } = spread
  const bands = standardDeviationUm / reading.bandHeightUm
  const standardDeviationBands = reading.pattern === 'saddle' ? bands / Math.SQRT2 : bands
  return { ...entered, repeatability: { standardDeviationBands, count: 1, degreesOfFreedom } }
}
