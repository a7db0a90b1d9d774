import type { FC } from 'hono/jsx'
import type { SurveyResult } from '../src/domain/survey-result.ts'
import { Button } from './components/button.tsx'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { minuteText } from './figures/time-text.ts'
import { ownErrorOf } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { SurveyCaution } from './surveys/caution.tsx'
import { SurveyFigures } from './surveys/figures.tsx'
import { InstrumentStops } from './surveys/instrument-stops.tsx'
import type { SurveyPageProps } from './surveys/page-props.ts'
import { ReadingForm } from './surveys/reading-form.tsx'
import { SurveyReadings } from './surveys/readings-table.tsx'
import { SurveySetUpFacts } from './surveys/set-up-facts.tsx'
import { SurveyStage } from './surveys/stage.tsx'
import { WaitingReadings } from './surveys/waiting-readings.tsx'
import { words } from './words/en.ts'

/** A survey while it is read: the next position drawn and in large, and what is known so far. */
export const SurveyPage: FC<{ frame: Frame; page: SurveyPageProps }> = ({ frame, page }) => {
  const { survey, progress, orderNumber } = page
  const { surveys: w, trade } = words
  const what = trade.characteristic[survey.characteristic]
  const { canRead } = page
  return (
    <Page frame={frame} title={`${w.takeTitle(what)} ${orderNumber}`} width="wide">
      <PageHead title={w.takeTitle(what)} over={`${orderNumber} · ${page.sealSerial}`}>
        <a href={`/work-orders/${orderNumber}`}>{words.results.back.order}</a>
      </PageHead>
      {canRead ? (
        <div class="stack-loose">
          <SurveyCaution survey={survey} />
          <InstrumentStops page={page} />
        </div>
      ) : (
        <Ended page={page} />
      )}
      {canRead ? null : <WaitingReadings page={page} />}
      {canRead ? (
        <div class="survey">
          <SurveyStage page={page} />
          <div class="stack">
            <ReadingForm page={page} />
            <p class="soft">{w.progress(progress.doneCount, progress.spots.length)}</p>
          </div>
        </div>
      ) : null}
      <div class="split">
        <section class="card stack" aria-labelledby="so-far">
          <h2 id="so-far">{survey.end === null ? w.liveTitle : w.resultTitle}</h2>
          <SoFar page={page} result={page.result} />
        </section>
        <div class="stack">
          <SurveySetUpFacts survey={survey} />
          {canRead ? <EndForms page={page} /> : null}
        </div>
      </div>
      <section class="records">
        <SurveyReadings page={page} canRead={canRead} />
      </section>
    </Page>
  )
}

const SoFar: FC<{ page: SurveyPageProps; result: SurveyResult | null }> = (props) => {
  const { page, result } = props
  if (result === null) return <p class="soft">{words.surveys.noneYet}</p>
  return (
    <SurveyFigures
      survey={page.survey}
      result={result}
      limitUm={page.limitUm}
      isOpen={page.survey.end === null}
    />
  )
}

const Ended: FC<{ page: SurveyPageProps }> = ({ page: { survey, orderNumber } }) => {
  const { end } = survey
  const w = words.surveys
  if (end === null) return null
  if (end.outcome === 'given-up') {
    return (
      <Notice kind="note" text={`${w.givenUp(end.byName, minuteText(end.at))} ${end.reason}`} />
    )
  }
  return (
    <p>
      {w.recordedAs}{' '}
      <a href={`/work-orders/${orderNumber}/results/measured-value/${end.measuredValueId}`}>
        {w.toResult}
      </a>
    </p>
  )
}

const EndForms: FC<{ page: SurveyPageProps }> = ({ page }) => {
  const { survey, progress, orderNumber, formKey, faults, giveUpReason } = page
  const w = words.surveys
  const action = `/work-orders/${orderNumber}/run-out-surveys/${survey.id}/end`
  const openCount = progress.spots.length - progress.doneCount
  return (
    <section class="card stack" aria-labelledby="end">
      <h2 id="end">{w.endTitle}</h2>
      {openCount > 0 ? (
        <p>{w.missing(openCount)}</p>
      ) : (
        <form method="post" action={action}>
          <input type="hidden" name="formKey" value={`${formKey}-record`} />
          <input type="hidden" name="outcome" value="recorded" />
          <p class="soft">{w.recordHint}</p>
          <Button label={w.record} kind="main" size="large" />
        </form>
      )}
      <details class="fold" open={giveUpReason !== '' || faults.some(isOfReason)}>
        <summary>{w.giveUp}</summary>
        <form method="post" action={action} class="fold-body">
          <input type="hidden" name="formKey" value={`${formKey}-give-up`} />
          <input type="hidden" name="outcome" value="given-up" />
          <TextAreaField
            name="reason"
            label={w.giveUpReason}
            hint={w.giveUpHint}
            value={giveUpReason}
            rows={2}
            {...ownErrorOf(faults, 'reason', w.faults)}
          />
          <ButtonRow>
            <Button label={w.giveUp} />
            <ButtonLink href={`/work-orders/${orderNumber}`} label={words.results.back.order} />
          </ButtonRow>
        </form>
      </details>
    </section>
  )
}

function isOfReason({ field }: SurveyPageProps['faults'][number]): boolean {
  return field === 'reason'
}
