import type { FC } from 'hono/jsx'
import { readingConditions } from '../../src/domain/flatness.ts'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { words } from '../words/en.ts'
import { Question } from './question.tsx'

/** Whether a face is read as it was found or as it leaves. */
export const ConditionQuestion: FC<{ number: number; value: string; error?: string }> = ({
  number,
  ...answer
}) => {
  const { flatness: w, trade } = words
  return (
    <Question number={number} title={w.condition}>
      <ChoiceCards
        name="condition"
        legend={w.condition}
        isLegendHidden
        choices={readingConditions.map((value) => ({
          value,
          label: trade.condition[value],
          detail: w.conditionDetail[value],
        }))}
        {...answer}
      />
    </Question>
  )
}
