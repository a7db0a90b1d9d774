import type { FC } from 'hono/jsx'
import type { AgreedRule } from '../src/domain/agreed-rule.ts'
import type { ShownResult } from '../src/domain/shown-result.ts'
import { coverageFactorText } from '../src/domain/uncertain-figure.ts'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { ResultFigure } from './components/result-figure.tsx'
import { secondResultText } from './figures/result-text.ts'
import { minuteText } from './figures/time-text.ts'
import { uncertainParts } from './figures/uncertain-text.ts'
import { limitLine } from './order-record.tsx'
import { type Frame, Page } from './page.tsx'
import { BudgetSection } from './results/budget-section.tsx'
import { DecisionSection } from './results/decision-section.tsx'
import { InstrumentsSection } from './results/instruments-section.tsx'
import { LeakSection, type LeakShown } from './results/leak-section.tsx'
import { placeText } from './results/place-text.ts'
import { SurveySection, type SurveyShown } from './results/survey-section.tsx'
import { type Trials, TrialsSection } from './results/trials-section.tsx'
import { WholeFaceSection, type WholeFaceShown } from './results/whole-face-section.tsx'
import { words } from './words/en.ts'

export type ResultPageProps = {
  readonly frame: Frame
  readonly orderNumber: string
  readonly sealSerial: string
  readonly result: ShownResult
  readonly agreedRule: AgreedRule
  /** Of the order's limit set. */
  readonly shareAtMost: number
  readonly trials: Trials
  /** Null where nothing was read as a whole. */
  readonly wholeFace: WholeFaceShown | null
  /** The survey that it came from; null for any other figure. */
  readonly survey: SurveyShown | null
  /** A leak in other units and as an estimate; null for any other figure. */
  readonly leak: LeakShown | null
  /** The page that leads here: the order's for the staff, the seal's for its customer. */
  readonly back: { readonly to: 'order' | 'seal'; readonly href: string }
}

/** One result: the figure, the budget line by line, the comparison, the instruments, the trials. */
export const ResultPage: FC<ResultPageProps> = (props) => {
  const { frame, orderNumber, sealSerial, result, agreedRule, shareAtMost, trials, back } = props
  const w = words.results
  const title = w.title(words.trade.characteristic[result.characteristic], placeText(result.on))
  return (
    <Page frame={frame} title={`${title} ${orderNumber}`}>
      <PageHead title={title} over={`${orderNumber} · ${sealSerial}`}>
        <a href={back.href}>{w.back[back.to]}</a>
      </PageHead>
      {result.isReplaced ? <Notice kind="note" text={w.replaced} /> : null}
      <div class="stack-loose">
        <section class="card stack">
          <FigureAndLimit result={result} />
          <p class="small soft">
            {w.recorded(result.recordedByName, minuteText(result.recordedAt), result.method)}
          </p>
          {result.note === '' ? null : <p class="small soft">{w.note(result.note)}</p>}
        </section>
        {props.wholeFace === null ? null : (
          <WholeFaceSection shown={props.wholeFace} method={result.method} />
        )}
        {props.survey === null ? null : (
          <SurveySection shown={props.survey} orderNumber={orderNumber} />
        )}
        <div class="split">
          <div class="stack-loose">
            <BudgetSection result={result} />
            <TrialsSection result={result} trials={trials} />
          </div>
          <div class="stack-loose">
            <DecisionSection result={result} agreedRule={agreedRule} shareAtMost={shareAtMost} />
            <InstrumentsSection instruments={result.instruments} />
          </div>
        </div>
        {props.leak === null ? null : <LeakSection shown={props.leak} />}
      </div>
    </Page>
  )
}

const FigureAndLimit: FC<{ result: ShownResult }> = ({ result }) => {
  const { characteristic, judged, uncertainty, sees } = result
  const { trade, results: w, flatnessSees } = words
  if (judged.value === null) return <Unreadable result={result} />
  const shown = uncertainParts(characteristic, judged.value, uncertainty)
  return (
    <>
      <ResultFigure
        label={sees === null ? trade.characteristic[characteristic] : flatnessSees[sees].name}
        value={shown.value}
        doubt={shown.doubt}
        unit={shown.unit}
        second={secondResultText(characteristic, judged.value)}
        limit={
          judged.limit === null
            ? words.recording.noLimitShort
            : `${words.recording.limit} ${limitLine(judged)}`
        }
        verdict={judged.verdict}
        word={trade.verdict[judged.verdict]}
      />
      {uncertainty === null ? null : (
        <p class="small">{w.factor(coverageFactorText(uncertainty.coverageFactor))}</p>
      )}
      {sees === null ? null : <p class="small">{flatnessSees[sees].what}</p>}
      <p class="small soft">{trade.why[judged.why]}</p>
    </>
  )
}

const Unreadable: FC<{ result: ShownResult }> = ({ result: { unreadableCause } }) => (
  <>
    <p class="lead">{words.results.unreadable}</p>
    {unreadableCause === null ? null : (
      <p>{words.flatness.unreadableBecause(words.trade.unreadableCause[unreadableCause])}</p>
    )}
  </>
)
