import type { StaticTest, StaticTestBudgetInput } from './static-test.ts'

/**
 * What is stated for the uncertainty of a test that corrects another. The form doesn't ask for the
 * steps of displays, which a program may have stated: they stay stated.
 * @param entered what the form says
 * @param replaced the test that is corrected, if there is one
 */
export function carriedStaticTestBudget(
  entered: StaticTestBudgetInput,
  replaced: Pick<StaticTest, 'budgetInput'> | undefined,
): StaticTestBudgetInput {
  const { resolutionPa, resolutionK } = replaced?.budgetInput ?? {}
  return {
    ...(resolutionPa === undefined ? {} : { resolutionPa }),
    ...(resolutionK === undefined ? {} : { resolutionK }),
    ...entered,
  }
}
