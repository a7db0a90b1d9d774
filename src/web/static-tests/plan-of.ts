import type { StaticTestPlan } from '../../../views/static-tests/plan.tsx'
import { appliedLimitOf } from '../../domain/applied-limit-of.ts'
import { carriedStaticTestBudget } from '../../domain/carried-static-test-budget.ts'
import { isConfirmed } from '../../domain/confirmed.ts'
import { type Input, openFields } from '../../domain/fields.ts'
import { parseStaticTestBudgetForm } from '../../domain/parse-static-test-budget.ts'
import { parseStaticTestFigures } from '../../domain/parse-static-test-figures.ts'
import { planStaticTest } from '../../domain/plan-static-test.ts'
import type { StaticTest } from '../../domain/static-test.ts'
import type { StaticTestDesk } from './desk.ts'
import { setUpOf } from './set-up-of.ts'

/**
 * What can be said before the gas is let in: of a hold at whose end everything is as at its start.
 * Null until start, volume and unit are entered.
 */
export function planOf(
  input: Input,
  desk: StaticTestDesk,
  replaced: StaticTest | undefined,
): StaticTestPlan | null {
  const isTimed = isEntered(input.durationMin) || isEntered(input.durationS)
  const temperature = isEntered(input.startTemperatureC) ? input.startTemperatureC : '20'
  const planned = {
    ...input,
    endPressure: input.startPressure,
    startTemperatureC: temperature,
    endTemperatureC: temperature,
    ...(isTimed ? {} : { durationMin: '1' }),
  }
  const fields = openFields(planned, isConfirmed(input))
  const figures = parseStaticTestFigures(fields)
  const parsed = fields.finish({ figures, budget: parseStaticTestBudgetForm(fields) })
  if (!parsed.ok) return null
  const budget = carriedStaticTestBudget(parsed.value.budget, replaced)
  const applied = appliedLimitOf('static-leak-rate', desk, { componentId: null })
  const { volumeL } = parsed.value.figures
  return planStaticTest(parsed.value.figures, {
    setUp: { ...setUpOf(input, desk, budget), volumeL },
    instruments: desk.instruments,
    limitPaM3PerS: applied?.limit.upper ?? null,
    isTimed,
  })
}

function isEntered(value: unknown): boolean {
  return typeof value === 'string' && value.trim() !== ''
}
