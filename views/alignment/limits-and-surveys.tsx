import type { FC } from 'hono/jsx'
import { VerdictMark } from '../components/verdict-mark.tsx'
import { JudgedLimit } from '../judged-limit.tsx'
import { SurveyFigure } from '../survey-figures/survey-figure.tsx'
import { words } from '../words/en.ts'
import { OtherLimits } from './limits-section.tsx'
import type { AlignmentForm } from './page-props.ts'

/** Each survey with its verdict, its plot folded away, and what other limits say of it. */
export const LimitsAndSurveys: FC<{ form: AlignmentForm }> = ({ form }) => {
  const { alignment: w, surveyFigures, trade } = words
  return (
    <section class="stack">
      <h2>{surveyFigures.heading}</h2>
      {form.surveys.some((one) => one.conflict !== null) ? (
        <p class="soft">{w.limitsNote}</p>
      ) : null}
      {form.surveys.map((aligned) => {
        const { survey, judged, measuredValueId, conflict } = aligned
        const { characteristic, condition, text, unit } = survey
        const href = `/work-orders/${form.orderNumber}/results/measured-value/${measuredValueId}`
        const title = surveyFigures.titleOf(
          trade.characteristic[characteristic],
          trade.condition[condition].toLowerCase(),
        )
        return (
          <article class="card stack">
            <div class="survey-head">
              <h3>
                <a href={href}>{title}</a>
              </h3>
              <VerdictMark verdict={judged.verdict} word={trade.verdict[judged.verdict]} />
            </div>
            <p class="survey-total number">{`${text} ${trade.unit[unit]}`}</p>
            <JudgedLimit judged={judged} />
            {conflict === null ? null : <OtherLimits conflict={conflict} survey={survey} />}
            <details class="fold">
              <summary>{surveyFigures.showPlot}</summary>
              <div class="fold-body">
                <SurveyFigure survey={survey} id={`survey-${measuredValueId}`} />
              </div>
            </details>
          </article>
        )
      })}
      <p class="soft">{surveyFigures.notMeasured}</p>
    </section>
  )
}
