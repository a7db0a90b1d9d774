import type { FC } from 'hono/jsx'
import { figure } from '../../src/domain/figure.ts'
import type { Judged } from '../../src/domain/judged.ts'
import { Facts } from '../components/facts.tsx'
import { resultText } from '../figures/result-text.ts'
import { AnswerMoreFrame } from '../recording/answer-more-frame.tsx'
import { JudgedBar } from '../recording/judged-bar.tsx'
import { uncertaintyPairs } from '../recording/uncertainty-pairs.ts'
import { words } from '../words/en.ts'
import type { StaticTestAnswer, StaticTestFigures } from './answer.tsx'

/** The limits with their sources, the leak in another unit, and what temperature did to it. */
export const StaticTestAnswerMore: FC<{ answer: StaticTestAnswer; isSwap?: boolean }> = (props) => {
  const { outcome } = props.answer
  if (outcome.kind !== 'figures') {
    return <AnswerMoreFrame isSwap={props.isSwap}>{null}</AnswerMoreFrame>
  }
  const { trade, staticTests: w } = words
  return (
    <AnswerMoreFrame isSwap={props.isSwap}>
      {outcome.judged.map((judged) => (
        <div class="stack-tight">
          <p class="strong">{trade.characteristic[judged.characteristic]}</p>
          <JudgedBar judged={judged} uncertainty={uncertaintyOf(outcome, judged)} />
          {judged.verdict === 'open' && judged.limit !== null ? (
            <p class="small">{trade.why[judged.why]}</p>
          ) : null}
        </div>
      ))}
      <Facts layout="rows" pairs={pairsOf(outcome)} />
      {outcome.isTemperatureChanged ? <p class="small soft">{w.uncompensatedNote}</p> : null}
    </AnswerMoreFrame>
  )
}

function uncertaintyOf(figures: StaticTestFigures, { characteristic }: Judged) {
  const isDrop = characteristic === 'static-drop'
  return isDrop ? figures.dropUncertainty : figures.leakUncertainty
}

function leakText(paM3PerS: number): string {
  const { value, unit } = resultText('static-leak-rate', paM3PerS)
  return `${value} ${unit}`
}

function pairsOf(figures: StaticTestFigures) {
  const w = words.staticTests
  const pressure = { decimals: 2 }
  const [start, end] = [figures.startPressureKPaAbs, figures.endPressureKPaAbs].map(
    (value) => figure(value, pressure).text,
  )
  return [
    {
      label: w.alsoAs,
      value: `${figure(figures.leakMbarLPerS, { digits: 3 }).text} ${w.mbarLPerS}`,
    },
    ...(figures.isTemperatureChanged
      ? [{ label: w.uncompensated, value: leakText(figures.uncompensatedPaM3PerS) }]
      : []),
    ...(figures.smallestSeenPaM3PerS === null
      ? []
      : [{ label: w.smallestSeen, value: leakText(figures.smallestSeenPaM3PerS) }]),
    ...uncertaintyPairs(figures.leakUncertainty),
    { label: w.absolute, value: w.fromTo(start ?? '', end ?? '') },
  ]
}
