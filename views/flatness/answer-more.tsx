import type { FC } from 'hono/jsx'
import { flatnessSees } from '../../src/domain/flatness-sees.ts'
import { formatFixed } from '../../src/science/rounding/format-fixed.ts'
import { Facts } from '../components/facts.tsx'
import { AnswerMoreFrame } from '../recording/answer-more-frame.tsx'
import { JudgedBar } from '../recording/judged-bar.tsx'
import { uncertaintyPairs } from '../recording/uncertainty-pairs.ts'
import { tradeWord } from '../words/en/trade.ts'
import { words } from '../words/en.ts'
import type { FlatnessAnswer } from './answer.tsx'

/** What stands behind the figure: the limit and its source, the form, the lamp, the doubt. */
export const FlatnessAnswerMore: FC<{ answer: FlatnessAnswer; isSwap?: boolean }> = (props) => {
  const { answer, isSwap } = props
  const { outcome } = answer
  if (outcome.kind !== 'figures' || outcome.computed.flatnessUm === null) {
    return <AnswerMoreFrame isSwap={isSwap}>{null}</AnswerMoreFrame>
  }
  return (
    <AnswerMoreFrame isSwap={isSwap}>
      {outcome.judged === null ? null : (
        <JudgedBar judged={outcome.judged} uncertainty={outcome.computed.uncertainty} />
      )}
      <Facts layout="rows" pairs={pairsOf(answer, outcome.computed)} />
      <p class="small soft">{words.flatnessSees[flatnessSees(outcome.computed.method)].what}</p>
    </AnswerMoreFrame>
  )
}

type Computed = Extract<FlatnessAnswer['outcome'], { kind: 'figures' }>['computed']

function pairsOf(answer: FlatnessAnswer, computed: Computed) {
  const { flatness: w, trade } = words
  const lamp = answer.uses.find((use) => use.kind === 'lamp')
  const height = formatFixed({ value: computed.bandHeightUm, decimals: 4 })
  const bands = formatFixed({ value: computed.bands ?? 0, decimals: 2 })
  return [
    { label: w.form, value: tradeWord(trade.form, computed.form) },
    {
      label: lamp === undefined ? w.lampUsed : `${w.lampUsed} ${lamp.number}`,
      value: w.bandsOf(bands, height),
    },
    ...uncertaintyPairs(computed.uncertainty),
  ]
}
