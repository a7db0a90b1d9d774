import type { FC } from 'hono/jsx'
import { surveyCharacteristics } from '../../src/domain/characteristic.ts'
import { registerSides, surveyPlaces, turnedParts } from '../../src/domain/dial-survey.ts'
import { turnDirections } from '../../src/domain/parse-survey-set-up.ts'
import { CheckField } from '../components/check-field.tsx'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { Field } from '../components/field.tsx'
import { SelectField } from '../components/select-field.tsx'
import { Question } from '../recording/question.tsx'
import { words } from '../words/en.ts'
import { ConditionQuestion } from './condition-question.tsx'
import { type SurveyTyped, surveyProps } from './form-values.ts'

/** What, when, where and at which positions: in the order in which a survey is set up. */
export const SurveyQuestions: FC<{ typed: SurveyTyped }> = ({ typed }) => {
  const { surveys: w, trade } = words
  return (
    <>
      <Question number={1} title={w.what}>
        <ChoiceCards
          {...surveyProps(typed, 'characteristic')}
          legend={w.what}
          isLegendHidden
          choices={surveyCharacteristics.map((value) => ({
            value,
            label: trade.characteristic[value],
            detail: w.whatDetail[value],
          }))}
        />
      </Question>
      <ConditionQuestion number={2} typed={typed} />
      <PlaceQuestion typed={typed} />
      <PositionsQuestion typed={typed} />
    </>
  )
}

const PlaceQuestion: FC<{ typed: SurveyTyped }> = ({ typed }) => {
  const w = words.surveys
  return (
    <Question number={3} title={w.placeTitle}>
      <ChoiceCards
        {...surveyProps(typed, 'place')}
        legend={w.place}
        choices={surveyPlaces.map((value) => ({ value, label: w.places[value] }))}
      />
      <Field
        {...surveyProps(typed, 'lockOutReference')}
        label={w.lockOut}
        hint={w.lockOutHint}
        width="short"
      />
      <ChoiceCards
        {...surveyProps(typed, 'turned')}
        legend={w.turned}
        choices={turnedParts.map((value) => ({ value, label: w.turnedParts[value] }))}
      />
      <ChoiceCards
        {...surveyProps(typed, 'direction')}
        legend={w.direction}
        choices={turnDirections.map((value) => ({ value, label: w.directions[value] }))}
      />
      <SelectField
        {...surveyProps(typed, 'surface')}
        label={w.surface}
        options={registerSides.map((value) => ({
          value,
          label: w.surfaces[value],
        }))}
        width="short"
      />
    </Question>
  )
}

const PositionsQuestion: FC<{ typed: SurveyTyped }> = ({ typed }) => {
  const w = words.surveys
  const { name, value, error } = surveyProps(typed, 'closing')
  return (
    <Question number={4} title={w.positionsTitle}>
      <div class="field-pair">
        <Field
          {...surveyProps(typed, 'positionCount')}
          label={w.positionCount}
          hint={w.positionCountHint}
          inputMode="numeric"
          width="number"
        />
        <Field
          {...surveyProps(typed, 'turnsCount')}
          label={w.turns}
          hint={w.turnsHint}
          inputMode="numeric"
          width="number"
        />
      </div>
      <CheckField
        name={name}
        value="yes"
        isChecked={value === 'yes'}
        label={w.closing}
        hint={w.closingHint}
        error={error}
      />
      <div class="field-pair">
        <Field {...surveyProps(typed, 'anglesDeg')} label={w.angles} hint={w.anglesHint} unit="°" />
        <Field {...surveyProps(typed, 'planesMm')} label={w.planes} hint={w.planesHint} unit="mm" />
      </div>
    </Question>
  )
}
