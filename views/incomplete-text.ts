import type { Judged } from '../src/domain/judged.ts'
import { missingFromBudget } from '../src/domain/missing-from-budget.ts'
import type { Uncertainty } from '../src/domain/uncertainty.ts'
import { sourceWord } from './words/en/uncertainty-sources.ts'
import { words } from './words/en.ts'

/**
 * That a verdict stands although its budget lacks an instrument, and why no probability stands
 * beside it; null where that is not so, or the verdict itself says it.
 */
export function incompleteText(judged: Judged, uncertainty: Uncertainty | null): string | null {
  if (uncertainty === null || judged.decision !== null) return null
  if (judged.verdict === 'open' || judged.why === 'incomplete-budget') return null
  const missing = missingFromBudget(uncertainty, judged.characteristic)
  return missing.length === 0
    ? null
    : words.inspection.incomplete(missing.map(sourceWord).join('; '))
}
