import { requireRange } from '../check/require-range.ts'
import type { BudgetLine } from '../uncertainty/budget-line.ts'
import { normalLine } from '../uncertainty/normal-line.ts'
import type { WorkingSprings } from './working-load.ts'

/**
 * Gives the uncertainty budget of the load of springs at their working length, in N.
 *
 * load = n rate (free - working): n (free - working) u(rate), n rate u(length) twice
 *
 * @param springs as workingLoad
 * @param known rateStandardUncertaintyNPerMm and lengthStandardUncertaintyMm, each 0 or more, absent
 *   where not known
 * @returns lines rate, free-length and working-length, as far as they are known
 * @throws RangeError outside these ranges
 * Validity: a stated rate; free and working length are measured each for itself. The line through
 *   loads has fittedLoadBudget. Friction is not in it.
 * Source: JCGM 100:2008, equation (10).
 * @example workingLoadBudget({ springsCount: 6, rateNPerMm: 3, freeLengthMm: 20,
 *   workingLengthMm: 14 }, { lengthStandardUncertaintyMm: 0.1 })[0]?.contribution // 1.800
 */
export function workingLoadBudget(
  springs: Pick<WorkingSprings, 'springsCount' | 'rateNPerMm' | 'freeLengthMm' | 'workingLengthMm'>,
  known: {
    readonly rateStandardUncertaintyNPerMm?: number | undefined
    readonly lengthStandardUncertaintyMm?: number | undefined
  },
): BudgetLine[] {
  const name = 'workingLoadBudget'
  const { springsCount, rateNPerMm, freeLengthMm, workingLengthMm } = springs
  const { rateStandardUncertaintyNPerMm: ofRate, lengthStandardUncertaintyMm: ofLength } = known
  const lines: BudgetLine[] = []
  if (ofRate !== undefined) {
    lines.push(
      normalLine({
        source: 'rate',
        value: requireRange(name, 'rateStandardUncertaintyNPerMm', ofRate, { from: 0, to: 1e9 }),
        sensitivity: springsCount * (freeLengthMm - workingLengthMm),
      }),
    )
  }
  if (ofLength === undefined) return lines
  const range = { from: 0, to: 1000 }
  const value = requireRange(name, 'lengthStandardUncertaintyMm', ofLength, range)
  const perMm = springsCount * rateNPerMm
  return [
    ...lines,
    normalLine({ source: 'free-length', value, sensitivity: perMm }),
    normalLine({ source: 'working-length', value, sensitivity: -perMm }),
  ]
}
