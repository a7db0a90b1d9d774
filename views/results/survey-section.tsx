import type { FC } from 'hono/jsx'
import type { SurveyRecord } from '../../src/domain/dial-survey.ts'
import { surveyProgress } from '../../src/domain/survey-progress.ts'
import { SurveyFigures } from '../surveys/figures.tsx'
import { SurveyReadings } from '../surveys/readings-table.tsx'
import { SurveySetUpFacts } from '../surveys/set-up-facts.tsx'
import { words } from '../words/en.ts'

export type SurveyShown = { readonly survey: SurveyRecord; readonly limitUm: number | null }

/** The survey that a measured value came from: plot, figures, every reading, how it was set up. */
export const SurveySection: FC<{ shown: SurveyShown; orderNumber: string }> = (props) => {
  const { shown, orderNumber } = props
  const { survey, limitUm } = shown
  const result = survey.end?.result ?? null
  if (result === null) return null
  const page = { survey, progress: surveyProgress(survey), orderNumber }
  return (
    <section class="card stack" aria-labelledby="survey" id="survey-section">
      <h2 id="survey">{words.surveys.resultTitle}</h2>
      <SurveyFigures survey={survey} result={result} limitUm={limitUm} isOpen={false} />
      <SurveyReadings page={page} canRead={false} />
      <SurveySetUpFacts survey={survey} />
    </section>
  )
}
