import type { FC } from 'hono/jsx'
import { measuredCharacteristics } from '../../src/domain/characteristic.ts'
import { readingConditions } from '../../src/domain/flatness.ts'
import { familyOf, type MeasuredFamily } from '../../src/domain/measured-family.ts'
import type { FaceKind } from '../../src/domain/seal.ts'
import { ChoiceCards } from '../components/choice-cards.tsx'
import { Question } from '../recording/question.tsx'
import { tradeWord } from '../words/en/trade.ts'
import { words } from '../words/en.ts'
import { type Typed, typedProps } from './fields.tsx'
import { ReadingQuestion } from './reading-question.tsx'

type Face = { readonly id: number; readonly kind: FaceKind; readonly material: string }

/** What was measured, where, and what was read, in the order of the work. */
export const MeasuredQuestions: FC<{
  family: MeasuredFamily
  faces: readonly Face[]
  typed: Typed
}> = ({ family, faces, typed }) => {
  const choices = measuredCharacteristics.filter((one) => familyOf[one] === family)
  const hasChoice = choices.length > 1
  const isOfFace = family !== 'dial'
  const before = (hasChoice ? 1 : 0) + (isOfFace ? 1 : 0)
  const { measuredValues: w, trade } = words
  return (
    <>
      {hasChoice ? (
        <Question number={1} title={w.what}>
          <ChoiceCards
            {...typedProps(typed, 'characteristic')}
            legend={w.what}
            isLegendHidden
            choices={choices.map((value) => ({
              value,
              label: trade.characteristic[value],
              detail: w.whatDetail[value],
            }))}
          />
        </Question>
      ) : (
        <input type="hidden" name="characteristic" value={choices[0]} />
      )}
      {isOfFace ? <FaceQuestion number={before} faces={faces} typed={typed} /> : null}
      <Question number={before + 1} title={w.condition}>
        <ChoiceCards
          {...typedProps(typed, 'condition')}
          legend={w.condition}
          isLegendHidden
          choices={readingConditions.map((value) => ({
            value,
            label: trade.condition[value],
            detail: w.conditionDetail[value],
          }))}
        />
      </Question>
      <ReadingQuestion number={before + 2} family={family} typed={typed} />
    </>
  )
}

const FaceQuestion: FC<{ number: number; faces: readonly Face[]; typed: Typed }> = (props) => {
  const { number, faces, typed } = props
  const { measuredValues: w, trade } = words
  return (
    <Question number={number} title={w.face}>
      <ChoiceCards
        {...typedProps(typed, 'componentId')}
        legend={w.face}
        isLegendHidden
        choices={faces.map((one) => ({
          value: String(one.id),
          label: trade.faceKind[one.kind],
          detail: tradeWord(trade.faceMaterial, one.material),
        }))}
      />
    </Question>
  )
}
