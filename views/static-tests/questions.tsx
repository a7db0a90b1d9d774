import type { FC } from 'hono/jsx'
import {
  leakPlaces,
  pressureReferences,
  pressureUnits,
  testSections,
} from '../../src/domain/static-test.ts'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { Field } from '../components/field.tsx'
import { SelectField } from '../components/select-field.tsx'
import { Question } from '../recording/question.tsx'
import { words } from '../words/en.ts'
import { ExpansionFields } from './expansion-fields.tsx'
import { NumberField, type Typed, typedProps } from './fields.tsx'

/** What was read, in the order of the test. */
export const StaticTestQuestions: FC<{ typed: Typed; now: string }> = ({ typed, now }) => {
  const { staticTests: w, trade } = words
  return (
    <>
      <Question number={1} title={w.section}>
        <ChoiceCards
          {...typedProps(typed, 'section')}
          legend={w.section}
          isLegendHidden
          choices={testSections.map((value) => ({
            value,
            label: trade.section[value],
            detail: w.sectionDetail[value],
          }))}
        />
      </Question>
      <Question number={2} title={w.start}>
        <div class="field-pair">
          <SelectField
            {...typedProps(typed, 'pressureUnit')}
            label={w.pressureUnit}
            options={pressureUnits.map((value) => ({ value, label: trade.pressureUnit[value] }))}
          />
          <SelectField
            {...typedProps(typed, 'pressureReference')}
            label={w.pressureReference}
            options={pressureReferences.map((value) => ({
              value,
              label: trade.pressureReference[value],
            }))}
          />
        </div>
        <div class="field-pair">
          <NumberField typed={typed} name="startPressure" label={w.startPressure} />
          <NumberField
            typed={typed}
            name="startTemperatureC"
            label={w.startTemperature}
            unit={trade.unit.c}
            hint={w.temperatureHint}
          />
        </div>
      </Question>
      <Question number={3} title={w.end}>
        <div class="field-pair">
          <NumberField typed={typed} name="endPressure" label={w.endPressure} />
          <NumberField
            typed={typed}
            name="endTemperatureC"
            label={w.endTemperature}
            unit={trade.unit.c}
          />
        </div>
      </Question>
      <TimeQuestion typed={typed} now={now} />
      <Question number={5} title={w.volume}>
        <NumberField
          typed={typed}
          name="volumeL"
          label={w.volumeLabel}
          unit={trade.unit.l}
          hint={w.volumeHint}
          isOptional
        />
        <ExpansionFields typed={typed} />
      </Question>
      <Question number={6} title={w.leakPlace}>
        <SelectField
          {...typedProps(typed, 'leakPlace')}
          label={w.leakPlaceLabel}
          hint={w.leakPlaceHint}
          emptyLabel={w.leakPlaceNone}
          options={leakPlaces.map((value) => ({ value, label: trade.leakPlace[value] }))}
        />
      </Question>
    </>
  )
}

const TimeQuestion: FC<{ typed: Typed; now: string }> = ({ typed, now }) => {
  const { staticTests: w, trade } = words
  return (
    <Question number={4} title={w.time}>
      <div class="field-pair">
        <NumberField
          typed={typed}
          name="durationMin"
          label={w.minutes}
          unit={trade.unit.min}
          isOptional
        />
        <NumberField
          typed={typed}
          name="durationS"
          label={w.seconds}
          unit={trade.unit.s}
          isOptional
        />
      </div>
      <Field
        {...typedProps(typed, 'startedAt')}
        label={w.startedAt}
        hint={w.startedAtHint(now)}
        type="datetime-local"
        width="short"
      />
    </Question>
  )
}
