import type { FC } from 'hono/jsx'
import { Facts } from '../components/facts.tsx'
import { AnswerMoreFrame } from '../recording/answer-more-frame.tsx'
import { JudgedBar } from '../recording/judged-bar.tsx'
import { uncertaintyPairs } from '../recording/uncertainty-pairs.ts'
import { words } from '../words/en.ts'
import type { MeasuredAnswer } from './answer.tsx'
import { finishPairs } from './finish-pairs.ts'

/** The value on its limit, where the limit comes from, and what stands behind the ±. */
export const MeasuredAnswerMore: FC<{ answer: MeasuredAnswer; isSwap?: boolean }> = (props) => {
  const { outcome } = props.answer
  if (outcome.kind !== 'figures') {
    return <AnswerMoreFrame isSwap={props.isSwap}>{null}</AnswerMoreFrame>
  }
  const { judged, uncertainty, readCount } = outcome
  const w = words.measuredValues
  return (
    <AnswerMoreFrame isSwap={props.isSwap}>
      {judged === null ? null : <JudgedBar judged={judged} uncertainty={uncertainty} />}
      <Facts
        layout="rows"
        pairs={[
          ...(readCount === 1 ? [] : [{ label: w.meanLabel, value: w.meanOf(readCount) }]),
          ...finishPairs(outcome),
          ...uncertaintyPairs(uncertainty),
        ]}
      />
    </AnswerMoreFrame>
  )
}
