import type { FC } from 'hono/jsx'
import type { SurveyRecord } from '../src/domain/dial-survey.ts'
import { surveyProgress } from '../src/domain/survey-progress.ts'
import { minuteText } from './figures/time-text.ts'
import { words } from './words/en.ts'

/** Surveys that were left half-way, to be taken up again; nothing where there is none. */
export const OpenSurveys: FC<{
  surveys: readonly SurveyRecord[]
  orderNumber: string
}> = ({ surveys, orderNumber }) => {
  const open = surveys.filter((one) => one.end === null)
  const { surveys: w, trade } = words
  if (open.length === 0) return null
  return (
    <section class="card stack" aria-labelledby="open-surveys">
      <h2 id="open-surveys">{w.openTitle}</h2>
      <ul class="stack-tight">
        {open.map((one) => {
          const { doneCount, spots } = surveyProgress(one)
          const what = trade.characteristic[one.characteristic]
          return (
            <li>
              <a href={`/work-orders/${orderNumber}/run-out-surveys/${one.id}`}>
                {w.goOn(what, doneCount, spots.length)}
              </a>{' '}
              <span class="small soft">
                {w.begunBy(one.startedByName, minuteText(one.startedAt))}
              </span>
            </li>
          )
        })}
      </ul>
      <p class="small soft">{w.openHint}</p>
    </section>
  )
}
