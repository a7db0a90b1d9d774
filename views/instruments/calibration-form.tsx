import type { FC } from 'hono/jsx'
import { calibrationUnit } from '../../src/domain/calibration-unit.ts'
import { toleranceStates } from '../../src/domain/instrument.ts'
import { calibrationFields } from '../../src/domain/parse-calibration.ts'
import { Button } from '../components/button.tsx'
import { ButtonRow } from '../components/button-row.tsx'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { Field } from '../components/field.tsx'
import { TextAreaField } from '../components/text-area-field.tsx'
import { ownErrorOf } from '../own-error-of.ts'
import { instrumentUnitSigns } from '../words/en/instrument-range.ts'
import { instrumentSentences } from '../words/en/instruments.ts'
import { words } from '../words/en.ts'
import type { InstrumentForms } from './forms.ts'

type Name = (typeof calibrationFields)[number]

/** What the certificate of a calibration says; folded until it is wanted. */
export const CalibrationForm: FC<InstrumentForms> = ({ instrument, formKey, typed, faults }) => {
  const w = words.instruments
  const unit = calibrationUnit(instrument)
  const own = (name: Name) => ({
    name,
    value: typed[name],
    ...ownErrorOf(faults, name, instrumentSentences),
  })
  const number = (name: Name) => ({
    ...own(name),
    inputMode: 'decimal' as const,
    width: 'number' as const,
    ...(unit === '' || name === 'coverageFactor' ? {} : { unit: instrumentUnitSigns[unit] }),
  })
  const states = toleranceStates.map((value) => ({ value, label: w.toleranceState[value] }))
  return (
    <details
      class="fold"
      open={faults.some((one) => calibrationFields.some((name) => name === one.field))}
    >
      <summary>{w.addCalibration}</summary>
      <form
        method="post"
        action={`/instruments/${instrument.id}/calibrations`}
        class="fold-body stack"
      >
        <input type="hidden" name="formKey" value={`${formKey}-calibration`} />
        <input type="hidden" name="seenUnit" value={unit} />
        <div class="field-pair">
          <Field {...own('calibratedOn')} label={w.calibratedOn} type="date" isRequired />
          <Field {...own('dueOn')} label={w.dueOn} hint={w.dueOnHint} type="date" isRequired />
        </div>
        <div class="field-pair">
          <Field {...own('certificateNumber')} label={w.certificateNumber} isRequired />
          <Field {...own('laboratory')} label={w.laboratory} />
        </div>
        <ChoiceCards {...own('asFound')} legend={w.asFound} hint={w.asFoundHint} choices={states} />
        <ChoiceCards {...own('asLeft')} legend={w.asLeft} hint={w.asLeftHint} choices={states} />
        <div class="field-pair">
          <Field {...number('asFoundError')} label={w.asFoundError} />
          <Field {...number('asLeftError')} label={w.asLeftError} hint={w.asLeftErrorHint} />
        </div>
        <div class="field-pair">
          <Field {...number('expandedUncertainty')} label={w.expandedUncertainty} />
          <Field
            {...number('coverageFactor')}
            label={w.coverageFactor}
            hint={w.coverageFactorHint}
          />
        </div>
        <TextAreaField {...own('note')} label={w.note} rows={2} />
        <ButtonRow>
          <Button label={w.submitCalibration} kind="main" />
        </ButtonRow>
      </form>
    </details>
  )
}
