import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { distributions } from '../../src/science/uncertainty/distributions.ts'
import { Field } from '../components/field.tsx'
import { SelectField } from '../components/select-field.tsx'
import { errorOf } from '../error-of.ts'
import { words } from '../words/en.ts'
import type { QuantityTyped } from './uncertainty-typed.ts'

const w = words.uncertainty

/** One quantity: its name, its value, and what is known about it. */
export const QuantityFields: FC<{
  typed: QuantityTyped
  index: number
  faults: readonly Fault[]
}> = ({ typed, index, faults }) => {
  const at = (name: keyof QuantityTyped) => {
    const field = `quantities[${index}].${name}`
    return { name: field, value: typed[name], ...errorOf(faults, field) }
  }
  const number = { inputMode: 'decimal', width: 'number' } as const
  return (
    <fieldset class="stack-tight">
      <legend class="strong">{w.quantity(index + 1)}</legend>
      <div class="field-pair">
        <Field {...at('name')} label={w.name} width="short" />
        <Field {...at('value')} label={w.value} {...number} />
        <SelectField
          {...at('distribution')}
          label={w.distribution}
          options={distributions.map((value) => ({
            value,
            label: words.trade.distribution[value],
          }))}
        />
      </div>
      <div class="field-pair">
        <Field {...at('halfWidth')} label={w.halfWidth} hint={w.halfWidthHint} {...number} />
        <Field {...at('standardUncertainty')} label={w.standardUncertainty} {...number} />
        <Field
          {...at('degreesOfFreedom')}
          label={w.degreesOfFreedom}
          hint={w.degreesHint}
          {...number}
        />
      </div>
    </fieldset>
  )
}
