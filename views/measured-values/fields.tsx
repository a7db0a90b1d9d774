import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { Field } from '../components/field.tsx'
import { ownErrorOf } from '../own-error-of.ts'
import { words } from '../words/en.ts'
import type { MeasuredFormValues, MeasuredValueName } from './form-values.ts'

export type Typed = {
  readonly values: MeasuredFormValues
  readonly faults: readonly Fault[]
}

/** Name, typed value and fault of a field, the same for every control. */
export function typedProps({ values, faults }: Typed, name: MeasuredValueName) {
  return { name, value: values[name], ...ownErrorOf(faults, name, words.measuredValues.faults) }
}

/** A number that may be left empty, with its unit. */
export const NumberField: FC<{
  typed: Typed
  name: MeasuredValueName
  label: string
  unit: string
  hint: string
}> = ({ typed, name, label, unit, hint }) => (
  <Field
    {...typedProps(typed, name)}
    label={label}
    unit={unit}
    hint={hint}
    inputMode="decimal"
    width="number"
  />
)
