import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { Field } from '../components/field.tsx'
import { type OwnSentences, ownSentence } from '../own-error-of.ts'

/** A form of the strip bench as typed: each value by the name of its field, '' where none was. */
export type BenchTyped = {
  readonly values: Readonly<Record<string, string>>
  readonly faults: readonly Fault[]
  /** The form's own sentences. */
  readonly own: OwnSentences
}

/** A name may say its row (`loads[0].lengthMm`): what an address can lead to has no such signs. */
export function benchId(name: string): string {
  return name.replace(/[^A-Za-z0-9]+/g, '-')
}

/**
 * Name, typed value and fault of a field, the same for every control.
 * @param also names whose faults are shown here too: of the list, for the first of its fields
 */
export function benchProps(
  { values, faults, own }: BenchTyped,
  name: string,
  ...also: readonly string[]
) {
  const fault = faults.find((one) => one.field === name || also.includes(one.field))
  return {
    name,
    id: benchId(name),
    value: values[name] ?? '',
    ...(fault === undefined ? {} : { error: ownSentence(fault, own) }),
  }
}

/** A number with its unit, which may be left empty. */
export const BenchNumber: FC<{
  typed: BenchTyped
  name: string
  label: string
  unit?: string
  hint?: string
  also?: string
  isRequired?: boolean
}> = ({ typed, name, label, unit, hint, also, isRequired }) => (
  <Field
    {...benchProps(typed, name, ...(also === undefined ? [] : [also]))}
    label={label}
    unit={unit}
    hint={hint}
    inputMode="decimal"
    width="number"
    {...(isRequired ? { isRequired } : {})}
  />
)
