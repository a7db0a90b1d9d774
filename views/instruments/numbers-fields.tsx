import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { type InstrumentUnit, instrumentUnits } from '../../src/domain/instrument.ts'
import { Field } from '../components/field.tsx'
import { SelectField } from '../components/select-field.tsx'
import { ownErrorOf } from '../own-error-of.ts'
import { selectOptions } from '../select-options.ts'
import { instrumentUnitSigns } from '../words/en/instrument-range.ts'
import { instrumentSentences } from '../words/en/instruments.ts'
import { words } from '../words/en.ts'
import type { InstrumentTyped } from './instrument-typed.ts'

type NumberName = 'rangeFrom' | 'rangeTo' | 'resolutionStep' | 'largestError'

/** Range, step and largest error as numbers: what readings are held against. */
export const InstrumentNumbersFields: FC<{
  typed: Pick<InstrumentTyped, 'unit' | NumberName>
  faults: readonly Fault[]
  /** Those of its kind, where that is known already. */
  units?: readonly InstrumentUnit[]
}> = ({ typed, faults, units = instrumentUnits }) => {
  const w = words.instruments
  const number = (name: NumberName) => ({
    name,
    value: typed[name],
    inputMode: 'decimal' as const,
    width: 'number' as const,
    ...ownErrorOf(faults, name, instrumentSentences),
  })
  return (
    <div class="stack">
      <h3>{w.numbersTitle}</h3>
      <p class="soft">{w.numbersLead}</p>
      <div class="field-pair">
        <SelectField
          name="unit"
          label={w.unit}
          emptyLabel={w.noUnit}
          value={typed.unit}
          width="short"
          options={selectOptions(units, instrumentUnitSigns)}
          {...ownErrorOf(faults, 'unit', instrumentSentences)}
        />
        <Field {...number('rangeFrom')} label={w.rangeFrom} />
        <Field {...number('rangeTo')} label={w.rangeTo} />
      </div>
      <div class="field-pair">
        <Field {...number('resolutionStep')} label={w.step} />
        <Field {...number('largestError')} label={w.largestError} hint={w.largestErrorHint} />
      </div>
    </div>
  )
}
