import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import type { ReaderSpread } from '../../src/domain/reader-spreads.ts'
import { Field } from '../components/field.tsx'
import { TextAreaField } from '../components/text-area-field.tsx'
import { ConfirmBeyond } from '../confirm-beyond.tsx'
import { ownErrorOf } from '../own-error-of.ts'
import type { InstrumentChoice } from '../recording/instrument-field.tsx'
import { LampAndFlat } from '../recording/lamp-and-flat.tsx'
import { words } from '../words/en.ts'
import { BudgetFields } from './budget-fields.tsx'
import type { FlatnessFormValues } from './form-values.ts'

/** With what and how it was read: filled in from the last reading, seldom touched. */
export const MoreFields: FC<{
  values: FlatnessFormValues
  faults: readonly Fault[]
  choice: InstrumentChoice
  spreads: readonly ReaderSpread[]
}> = ({ values, faults, choice, spreads }) => {
  const w = words.flatness
  const common = (name: keyof FlatnessFormValues & string) => ({
    name,
    value: values[name] as string,
    ...ownErrorOf(faults, name, w.faults),
  })
  const number = { inputMode: 'decimal', width: 'number' } as const
  const { unit } = words.trade
  return (
    <section class="question" id="how">
      <h2 class="section-head">{w.moreTitle}</h2>
      <LampAndFlat
        lamp={common('lampInstrumentId')}
        flat={common('opticalFlatInstrumentId')}
        choice={choice}
      />
      <div class="field-pair">
        <Field
          {...common('soakMin')}
          {...number}
          label={w.soak}
          unit={unit.min}
          hint={w.soakHint}
        />
        <Field
          {...common('temperatureC')}
          {...number}
          label={w.temperature}
          unit={unit.c}
          hint={w.temperatureHint}
        />
        <Field
          {...common('viewingAngleDeg')}
          {...number}
          label={w.angle}
          unit={unit.deg}
          hint={w.angleHint}
        />
      </div>
      <BudgetFields values={values.budget} faults={faults} spreads={spreads} />
      <ConfirmBeyond faults={faults} typed={values.confirmBeyondWindow} />
      <TextAreaField {...common('note')} label={w.note} rows={2} />
    </section>
  )
}
