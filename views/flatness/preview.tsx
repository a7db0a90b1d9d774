import type { FC } from 'hono/jsx'
import type { Instrument } from '../../src/domain/instrument.ts'
import { type FlatnessAnswer, FlatnessAnswerView } from './answer.tsx'
import { FlatnessAnswerMore } from './answer-more.tsx'
import type { FlatnessFormValues } from './form-values.ts'
import { Remembered } from './remembered.tsx'

/** What the server sends while the form is filled in: the answer, and what is in hand. */
export const FlatnessPreview: FC<{
  answer: FlatnessAnswer
  values: FlatnessFormValues
  instruments: readonly Instrument[]
}> = ({ answer, values, instruments }) => (
  <>
    <FlatnessAnswerView answer={answer} />
    <FlatnessAnswerMore answer={answer} isSwap />
    <Remembered values={values} instruments={instruments} isSwap />
  </>
)
