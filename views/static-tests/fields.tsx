import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { Field } from '../components/field.tsx'
import { ownErrorOf } from '../own-error-of.ts'
import { words } from '../words/en.ts'
import type { StaticTestFormValues, StaticTestValueName } from './form-values.ts'

export type Typed = {
  readonly values: StaticTestFormValues
  readonly faults: readonly Fault[]
}

/** Name, typed value and fault of a field, the same for every control. */
export function typedProps({ values, faults }: Typed, name: StaticTestValueName) {
  return { name, value: values[name], ...ownErrorOf(faults, name, words.staticTests.faults) }
}

/** A number of the test with its unit. */
export const NumberField: FC<{
  typed: Typed
  name: StaticTestValueName
  label: string
  unit?: string
  hint?: string
  isOptional?: boolean
}> = ({ typed, name, label, unit, hint, isOptional }) => (
  <Field
    {...typedProps(typed, name)}
    label={label}
    unit={unit}
    hint={hint}
    inputMode="decimal"
    width="number"
    {...(isOptional ? {} : { isRequired: true })}
  />
)
