import type { Fault } from '../../domain/fault.ts'
import { type Input, openFields } from '../../domain/fields.ts'
import type { FlatnessBudgetInput } from '../../domain/flatness-budget-input.ts'
import { parseFlatnessBudget } from '../../domain/parse-flatness-budget.ts'

/**
 * What is stated for the uncertainty while the form is being filled in. What is still empty is no
 * mistake yet: a bow or a list of repeats that is not complete does not count so far.
 */
export function budgetSoFar(input: Input): {
  readonly budget: FlatnessBudgetInput
  readonly faults: readonly Fault[]
} {
  const fields = openFields(input)
  const budget = parseFlatnessBudget(fields, input)
  const isIncomplete = (name: string) => fields.faults.some((one) => one.field.startsWith(name))
  return {
    budget: {
      ...budget,
      repeats: isIncomplete('repeats') ? [] : budget.repeats,
      thermal: isIncomplete('thermal') ? null : budget.thermal,
      flatThermal: isIncomplete('flatThermal') ? null : budget.flatThermal,
    },
    faults: fields.faults.filter((one) => one.kind !== 'empty' && one.kind !== 'too-few'),
  }
}
