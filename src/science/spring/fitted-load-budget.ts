import { requireRange } from '../check/require-range.ts'
import { requireWhole } from '../check/require-whole.ts'
import { type BudgetLine, budgetLine } from '../uncertainty/budget-line.ts'
import { normalLine } from '../uncertainty/normal-line.ts'
import type { SpringRate } from './spring-rate.ts'

/**
 * Gives the uncertainty budget of the load of springs at their working length, in N, where it is
 * read off the line through loads at lengths.
 *
 * load-line: s sqrt(1 / N + (working - mean length)^2 / sum of (length - mean length)^2), of one
 * spring, with N - 2 degrees of freedom; through two loads s is not known, and the lengths that they
 * were read at stand for it: rate u(length). working-length: n rate u(length)
 *
 * @param fit as springRate gives it
 * @param springs springsCount n: whole, from 1 to 1000; workingLengthMm from 0.1 to 10 000
 * @param known lengthStandardUncertaintyMm: 0 or more, absent where not known
 * @returns lines load-line and working-length, as far as they are known
 * @throws RangeError outside these ranges
 * Validity: rate and free length of one fit err together; taken each for itself they would be far too
 *   large between the loads and far too small beyond them. An error that all lengths share, and
 *   friction, are not in it.
 * Source: NIST/SEMATECH e-Handbook 4.5.1.1, standard deviation of a fitted value; JCGM 100:2008,
 *   equation (10) and H.3.
 * @example fittedLoadBudget({ rateNPerMm: 5, rateStandardUncertaintyNPerMm: null,
 *   fittedFreeLengthMm: 34, residualsN: [0, 0], degreesOfFreedom: 0, residualStandardDeviationN: null,
 *   meanLengthMm: 25, lengthSpreadMm2: 50 }, { springsCount: 1, workingLengthMm: 30 }, {
 *   lengthStandardUncertaintyMm: 0.1 })[0]?.value // 0.5000
 */
export function fittedLoadBudget(
  fit: SpringRate,
  springs: { readonly springsCount: number; readonly workingLengthMm: number },
  known: { readonly lengthStandardUncertaintyMm?: number | undefined },
): BudgetLine[] {
  const name = 'fittedLoadBudget'
  const { springsCount, workingLengthMm } = springs
  requireWhole(name, 'springsCount', springsCount, { from: 1, to: 1000 })
  requireRange(name, 'workingLengthMm', workingLengthMm, { from: 0.1, to: 10_000 })
  const count = fit.degreesOfFreedom + 2
  const apart = workingLengthMm - fit.meanLengthMm
  const perReading = Math.sqrt(1 / count + apart ** 2 / fit.lengthSpreadMm2)
  const ofLength = known.lengthStandardUncertaintyMm
  if (ofLength !== undefined) {
    requireRange(name, 'lengthStandardUncertaintyMm', ofLength, { from: 0, to: 1000 })
  }
  const line = { source: 'load-line', sensitivity: springsCount }
  const scatter = fit.residualStandardDeviationN
  const lines: BudgetLine[] = []
  if (scatter !== null) {
    const { degreesOfFreedom } = fit
    const value = scatter * perReading
    lines.push(budgetLine({ ...line, value, distribution: 't', degreesOfFreedom }))
  } else if (ofLength !== undefined) {
    lines.push(normalLine({ ...line, value: fit.rateNPerMm * ofLength * perReading }))
  }
  if (ofLength === undefined) return lines
  const sensitivity = -springsCount * fit.rateNPerMm
  return [...lines, normalLine({ source: 'working-length', value: ofLength, sensitivity })]
}
