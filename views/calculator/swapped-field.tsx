import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { Field } from '../components/field.tsx'
import { errorOf } from '../error-of.ts'

/**
 * A number whose fault comes and goes while it is typed: the server sends the field again and it
 * is merged into the one that stands there, which keeps the focus and the text.
 */
export const SwappedField: FC<{
  name: string
  label: string
  value: string
  faults: readonly Fault[]
  unit?: string
  hint?: string
  isSwap?: boolean | undefined
}> = ({ name, faults, isSwap, ...rest }) => (
  <div id={`${name}-place`} {...(isSwap ? { 'hx-swap-oob': 'outerMorph' } : {})}>
    <Field {...rest} name={name} inputMode="decimal" width="number" {...errorOf(faults, name)} />
  </div>
)
