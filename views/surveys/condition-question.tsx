import type { FC } from 'hono/jsx'
import { readingConditions } from '../../src/domain/flatness.ts'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { Question } from '../recording/question.tsx'
import { words } from '../words/en.ts'
import { type SurveyTyped, surveyProps } from './form-values.ts'

/** Whether a survey is of a machine or part as it came in, or as it leaves. */
export const ConditionQuestion: FC<{ number: number; typed: SurveyTyped }> = (props) => {
  const { number, typed } = props
  const { surveys: w, measuredValues, trade } = words
  return (
    <Question number={number} title={w.condition}>
      <ChoiceCards
        {...surveyProps(typed, 'condition')}
        legend={w.condition}
        isLegendHidden
        choices={readingConditions.map((value) => ({
          value,
          label: trade.condition[value],
          detail: measuredValues.conditionDetail[value],
        }))}
      />
    </Question>
  )
}
