import type { FC } from 'hono/jsx'
import { type StaticTestAnswer, StaticTestAnswerView } from './answer.tsx'
import { StaticTestAnswerMore } from './answer-more.tsx'

/** What the server sends while the form is filled in. */
export const StaticTestPreview: FC<{ answer: StaticTestAnswer }> = ({ answer }) => (
  <>
    <StaticTestAnswerView answer={answer} />
    <StaticTestAnswerMore answer={answer} isSwap />
  </>
)
