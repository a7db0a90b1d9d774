import type { FC } from 'hono/jsx'
import { contactPoints, floatHolds } from '../../src/domain/dial-survey.ts'
import { fittingKinds } from '../../src/domain/measured-family.ts'
import { lengthUnits } from '../../src/domain/measured-value.ts'
import { Field } from '../components/field.tsx'
import { SelectField } from '../components/select-field.tsx'
import { TextAreaField } from '../components/text-area-field.tsx'
import { type InstrumentChoice, InstrumentField } from '../recording/instrument-field.tsx'
import { Question } from '../recording/question.tsx'
import { words } from '../words/en.ts'
import { type SurveyTyped, type SurveyValueName, surveyProps } from './form-values.ts'

/** With what it is read, and what the tilt and the limits need to know. */
export const SurveyMoreFields: FC<{ typed: SurveyTyped; choice: InstrumentChoice }> = (props) => {
  const { typed, choice } = props
  const { surveys: w, trade } = words
  return (
    <Question number={5} title={w.indicatorTitle}>
      <InstrumentField
        {...surveyProps(typed, 'instrumentId')}
        label={w.indicator}
        choice={choice}
        kinds={fittingKinds.dial}
        isRequired
      />
      <div class="field-pair">
        <SelectField
          {...surveyProps(typed, 'unit')}
          label={w.unit}
          hint={w.unitHint}
          options={lengthUnits.map((value) => ({ value, label: trade.unit[value] }))}
        />
        <SelectField
          {...surveyProps(typed, 'contact')}
          label={w.contact}
          emptyLabel={w.contactNotSaid}
          options={contactPoints.map((value) => ({ value, label: w.contacts[value] }))}
        />
      </div>
      <InstrumentField
        {...surveyProps(typed, 'secondInstrumentId')}
        label={w.second}
        choice={choice}
        kinds={fittingKinds.dial}
        emptyLabel={w.secondNone}
      />
      <p class="field-hint">{w.secondHint}</p>
      <h3>{w.moreTitle}</h3>
      <div class="field-pair">
        <Length typed={typed} name="sweptDiameterMm" label={w.swept} hint={w.sweptHint} />
        <Length typed={typed} name="sealMeanDiameterMm" label={w.sealMean} hint={w.sealMeanHint} />
        <Length typed={typed} name="sizeMm" label={w.bore} hint={w.boreHint} />
        <SelectField
          {...surveyProps(typed, 'floatHeld')}
          label={w.float}
          options={floatHolds.map((value) => ({ value, label: w.floats[value] }))}
        />
        <Length typed={typed} name="sagUm" label={w.sag} hint={w.sagHint} unit="µm" />
        <Length typed={typed} name="topAngleDeg" label={w.top} unit="°" />
        <Length typed={typed} name="leverAngleDeg" label={w.lever} hint={w.leverHint} unit="°" />
      </div>
      <TextAreaField {...surveyProps(typed, 'note')} label={w.note} rows={2} />
    </Question>
  )
}

const Length: FC<{
  typed: SurveyTyped
  name: SurveyValueName
  label: string
  hint?: string
  unit?: string
}> = ({ typed, name, label, hint, unit = 'mm' }) => (
  <Field
    {...surveyProps(typed, name)}
    label={label}
    hint={hint}
    unit={unit}
    inputMode="decimal"
    width="number"
  />
)
