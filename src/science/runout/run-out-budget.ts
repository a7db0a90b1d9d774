import { requireRange } from '../check/require-range.ts'
import type { BudgetLine } from '../uncertainty/budget-line.ts'
import { normalLine } from '../uncertainty/normal-line.ts'

/**
 * Gives the uncertainty budget of a total indicator reading from that of one reading, in um.
 *
 * u = sqrt 2 x u(reading): the highest and the lowest reading each err for themselves
 *
 * @param readingStandardUncertaintyUm of one reading, 0 or more
 * @returns one line, reading
 * @throws RangeError outside this range
 * Validity: linear. Noise also raises a total reading, the more the more positions are read and the
 *   smaller the run-out is: 2 e of the fit hardly rises.
 * Source: JCGM 100:2008, equation (10).
 * @example runOutBudget(2)[0]?.contribution // 2.828
 */
export function runOutBudget(readingStandardUncertaintyUm: number): BudgetLine[] {
  const range = { from: 0, to: 1e9 }
  const name = 'readingStandardUncertaintyUm'
  const value = requireRange('runOutBudget', name, readingStandardUncertaintyUm, range)
  return [normalLine({ source: 'reading', value, sensitivity: Math.SQRT2 })]
}
