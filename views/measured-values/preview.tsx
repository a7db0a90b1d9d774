import type { FC } from 'hono/jsx'
import { type MeasuredAnswer, MeasuredAnswerView } from './answer.tsx'
import { MeasuredAnswerMore } from './answer-more.tsx'

/** What the server sends while the form is filled in. */
export const MeasuredPreview: FC<{ answer: MeasuredAnswer }> = ({ answer }) => (
  <>
    <MeasuredAnswerView answer={answer} />
    <MeasuredAnswerMore answer={answer} isSwap />
  </>
)
