import type { FC } from 'hono/jsx'
import type { CertifiedSurvey } from '../../src/domain/certified-survey.ts'
import { words } from '../words/en.ts'
import { SurveyFigure } from './survey-figure.tsx'

/** The dial surveys of a certificate, each folded away; nothing where there is none. */
export const CertifiedSurveys: FC<{
  surveys: readonly CertifiedSurvey[]
  orderNumber: string
}> = ({ surveys, orderNumber }) => {
  const { surveyFigures: w, trade, alignment } = words
  if (surveys.length === 0) return null
  return (
    <section class="card stack">
      <h2>{w.heading}</h2>
      <p class="soft">{w.howToRead}</p>
      {surveys.map((survey, index) => {
        const { characteristic, condition, isNewest } = survey
        const title = w.titleOf(
          trade.characteristic[characteristic],
          trade.condition[condition].toLowerCase(),
        )
        return (
          <details class="fold">
            <summary>{isNewest ? title : `${title} (${w.overtaken})`}</summary>
            <div class="fold-body">
              <SurveyFigure survey={survey} id={`certified-${index}`} />
            </div>
          </details>
        )
      })}
      <p class="small soft">{w.notMeasured}</p>
      <p>
        <a href={`/work-orders/${orderNumber}/alignment`}>{alignment.link}</a>
      </p>
    </section>
  )
}
