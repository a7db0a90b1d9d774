import type { FlatnessReading } from './flatness.ts'
import type { FlatnessBudgetInput } from './flatness-budget-input.ts'

/**
 * What is stated for the uncertainty of a reading that corrects another. The form doesn't ask how
 * far counts are known to scatter, which a program may have stated: it stays stated, unless counts
 * made again now say it.
 * @param entered what the form says
 * @param replaced the reading that is corrected, if there is one
 */
export function carriedFlatnessBudget(
  entered: FlatnessBudgetInput,
  replaced: Pick<FlatnessReading, 'budgetInput'> | undefined,
): FlatnessBudgetInput {
  const known = replaced?.budgetInput?.repeatability ?? null
  if (known === null || entered.repeats.length > 0 || entered.repeatability !== null) return entered
  return { ...entered, repeatability: known }
}
