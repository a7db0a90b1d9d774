import type { FC } from 'hono/jsx'
import { type LapAnswer, LapAnswerMore, LapAnswerView } from './answer.tsx'

/** What the server sends while the form is filled in. */
export const LapPreview: FC<{ answer: LapAnswer }> = ({ answer }) => (
  <>
    <LapAnswerView answer={answer} />
    <LapAnswerMore answer={answer} isSwap />
  </>
)
