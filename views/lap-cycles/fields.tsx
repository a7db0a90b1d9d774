import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import type { LapFigureName } from '../../src/domain/lap-cycle.ts'
import { Field } from '../components/field.tsx'
import { ownErrorOf } from '../own-error-of.ts'
import { words } from '../words/en.ts'
import type { LapFormName, LapFormValues } from './form-values.ts'

export type LapTyped = {
  readonly values: LapFormValues
  readonly faults: readonly Fault[]
}

/** Name, typed value and fault of a field, the same for every control. */
export function lapFieldProps({ values, faults }: LapTyped, name: LapFormName) {
  return { name, value: values[name], ...ownErrorOf(faults, name, words.lapping.faults) }
}

/** A figure of the cycle, which may be left empty, with its unit. */
export const LapFigureField: FC<{ typed: LapTyped; name: LapFigureName }> = ({ typed, name }) => {
  const { label, hint, unit } = words.lapping.figures[name]
  return (
    <Field
      {...lapFieldProps(typed, name)}
      label={label}
      unit={unit}
      hint={hint === '' ? undefined : hint}
      inputMode="decimal"
      width="number"
    />
  )
}
