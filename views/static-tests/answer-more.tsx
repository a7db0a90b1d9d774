import type { FC } from 'hono/jsx'
import { figure } from '../../src/domain/figure.ts'
import { Facts } from '../components/facts.tsx'
import { resultText } from '../figures/result-text.ts'
import { AnswerMoreFrame } from '../recording/answer-more-frame.tsx'
import { JudgedBar } from '../recording/judged-bar.tsx'
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
          <JudgedBar judged={judged} />
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

function pairsOf(figures: StaticTestFigures) {
  const w = words.staticTests
  const pressure = { decimals: 2 }
  const uncompensated = resultText('static-leak-rate', figures.uncompensatedPaM3PerS)
  const [start, end] = [figures.startPressureKPaAbs, figures.endPressureKPaAbs].map(
    (value) => figure(value, pressure).text,
  )
  return [
    {
      label: w.alsoAs,
      value: `${figure(figures.leakMbarLPerS, { digits: 3 }).text} ${w.mbarLPerS}`,
    },
    ...(figures.isTemperatureChanged
      ? [{ label: w.uncompensated, value: `${uncompensated.value} ${uncompensated.unit}` }]
      : []),
    { label: w.absolute, value: w.fromTo(start ?? '', end ?? '') },
  ]
}
