import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import { figure } from '../../src/domain/figure.ts'
import type { LapAdvice } from '../../src/domain/lap-advice.ts'
import type { LapForecast } from '../../src/domain/lap-forecast.ts'
import { Caution } from '../components/caution.tsx'
import { Facts } from '../components/facts.tsx'
import { ResultFigure } from '../components/result-figure.tsx'
import { numberText } from '../figures/number-text.ts'
import { ownSentence } from '../own-error-of.ts'
import { AnswerMoreFrame } from '../recording/answer-more-frame.tsx'
import { words } from '../words/en.ts'

/** What can be said of the face while its cycle is being entered. */
export type LapAnswer =
  | { readonly kind: 'ask' }
  | { readonly kind: 'faulty'; readonly faults: readonly Fault[] }
  | { readonly kind: 'outlook'; readonly forecast: LapForecast; readonly advice: LapAdvice }

/** The height that is left and the warning, drawn anew whenever something changes. */
export const LapAnswerView: FC<{ answer: LapAnswer }> = ({ answer }) => {
  const w = words.lapping
  if (answer.kind === 'ask') {
    return (
      <>
        <p class="result-label">{w.answerTitle}</p>
        <p class="lead">{w.ask.face}</p>
      </>
    )
  }
  if (answer.kind === 'faulty') {
    return (
      <>
        {answer.faults.slice(0, 2).map((fault) => (
          <p class="field-error">{ownSentence(fault, w.faults)}</p>
        ))}
      </>
    )
  }
  return (
    <>
      <Left forecast={answer.forecast} />
      <Warnings forecast={answer.forecast} />
      {answer.advice.isLooseOnCarbon ? (
        <Caution sign={words.chrome.caution} title={w.looseOnCarbonTitle}>
          <p>{w.looseOnCarbon}</p>
        </Caution>
      ) : null}
    </>
  )
}

const Left: FC<{ forecast: LapForecast }> = ({ forecast }) => {
  const w = words.lapping
  const { after, expected, lapping } = forecast
  const { minimumMm } = lapping
  if (after.mm === null) {
    return (
      <>
        <p class="result-label">{w.answerTitle}</p>
        <p class="lead">{w.ask.height}</p>
      </>
    )
  }
  const isBelow = after.standing === 'below'
  const isKnown = after.standing !== 'unknown'
  const value = mmText(after.mm)
  return (
    <>
      <ResultFigure
        label={w.answerTitle}
        value={after.isAtMost ? w.atMost(value) : value}
        unit={words.trade.unit.mm}
        limit={minimumMm === null ? undefined : w.minimum(numberText(minimumMm))}
        verdict={isKnown ? (isBelow ? 'fail' : 'pass') : 'open'}
        word={isBelow && after.isExpected ? w.wouldFall : w.left[after.standing]}
      />
      {after.isExpected && expected !== null ? (
        <p class="small">
          {w.expectedBy[expected.by](stockText(expected.um), expected.cycleCount)}
        </p>
      ) : null}
      {minimumMm === null ? <p class="small">{w.noMinimum}</p> : null}
    </>
  )
}

/** Before the face falls below, by what is entered, planned, or usual for it so far. */
const Warnings: FC<{ forecast: LapForecast }> = ({ forecast: { after, next, lapping } }) => {
  const w = words.lapping
  const minimum = numberText(lapping.minimumMm ?? 0)
  if (after.standing === 'below' && after.mm !== null) {
    const say = after.isExpected ? w.warning.expected : w.warning.entered
    return (
      <Caution sign={words.chrome.caution} title={w.warningTitle.now}>
        <p>{say(mmText(after.mm), minimum)}</p>
      </Caution>
    )
  }
  if (next === null || next.standing !== 'below' || next.mm === null) return null
  return (
    <Caution sign={words.chrome.caution} title={w.warningTitle.next}>
      <p>{w.warning.next(mmText(next.mm), minimum)}</p>
    </Caution>
  )
}

/** What stands behind the height: cycles, stock, and what the plate's form does. */
export const LapAnswerMore: FC<{ answer: LapAnswer; isSwap?: boolean }> = ({ answer, isSwap }) => {
  if (answer.kind !== 'outlook') return <AnswerMoreFrame isSwap={isSwap}>{null}</AnswerMoreFrame>
  const w = words.lapping
  const { step, lapping, after } = answer.forecast
  const { sagUm } = answer.advice
  const unknown = (after.isExpected ? step.before : (step.after ?? step.before))?.unknownCount ?? 0
  const isOpenItself = !after.isExpected && step.removedUm === null && unknown > 0
  const unsaid = isOpenItself ? unknown - 1 : unknown
  return (
    <AnswerMoreFrame isSwap={isSwap}>
      <Facts
        layout="rows"
        pairs={[
          { label: w.facts.number, value: w.cycleNumber(step.number) },
          { label: w.facts.relaps, value: w.relaps(lapping.relapCount) },
          ...(step.before === null
            ? []
            : [
                {
                  label: w.facts.before,
                  value: `${mmText(step.before.mm)} ${words.trade.unit.mm}`,
                },
              ]),
          ...(step.removedUm === null
            ? []
            : [{ label: w.facts.removed, value: w.removed(stockText(step.removedUm)) }]),
        ]}
      />
      {unsaid > 0 ? <p class="small">{w.atMostHint(unsaid)}</p> : null}
      {sagUm === null || sagUm === 0 ? null : <Sag um={sagUm} />}
      <p class="small soft">{w.without}</p>
    </AnswerMoreFrame>
  )
}

const Sag: FC<{ um: number }> = ({ um }) => {
  const { sag } = words.lapping
  const size = figure(Math.abs(um), { decimals: 2 }).text
  return (
    <p class="small">
      {um > 0 ? sag.convex(size) : sag.concave(size)} {sag.why}
    </p>
  )
}

function mmText(mm: number): string {
  return figure(mm, { decimals: 3 }).text
}

function stockText(um: number): string {
  return figure(um, { decimals: 1 }).text
}
