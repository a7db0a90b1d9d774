import type { FC } from 'hono/jsx'
import { spotKey } from '../../src/domain/survey-spots.ts'
import { Button } from '../components/button.tsx'
import { Field } from '../components/field.tsx'
import { ownErrorOf } from '../own-error-of.ts'
import { words } from '../words/en.ts'
import type { SurveyPageProps } from './page-props.ts'
import { spotDetail, spotTitle } from './spot-text.ts'
import { Gauge } from './stage.tsx'
import { WaitingReadings } from './waiting-readings.tsx'

const steps = [-10, -1, 1, 10] as const

/** The next position in large and one field for its reading: type, Enter, turn on. */
export const ReadingForm: FC<{ page: SurveyPageProps }> = ({ page }) => {
  const { survey, progress, asked, typed, faults, formKey, graduation, reader } = page
  const w = words.surveys
  if (asked === null) return <Done page={page} />
  const spots = progress.spots.map((spot) => ({
    ...spot,
    title: spotTitle(survey, spot),
    detail: spotDetail(survey, spot),
    isDone: progress.current.has(spotKey(spot)),
  }))
  return (
    <form
      method="post"
      action={`/work-orders/${page.orderNumber}/run-out-surveys/${survey.id}/readings`}
      class="survey-form"
      data-survey
      data-spots={JSON.stringify(spots)}
      data-form-key={formKey}
      data-all-typed={w.allTyped}
    >
      <input type="hidden" name="formKey" value={`${formKey}-${spotKey(asked)}`} />
      <input type="hidden" name="readerId" value={String(reader.id)} />
      {(['planeIndex', 'turnIndex', 'positionIndex', 'indicator'] as const).map((name) => (
        <input type="hidden" name={name} value={String(asked[name])} />
      ))}
      <p class="survey-next" aria-live="polite">
        <span class="soft">{w.next} </span>
        <strong data-spot-title>{spotTitle(survey, asked)}</strong>
        <span class="survey-detail" data-spot-detail>
          {spotDetail(survey, asked)}
        </span>
      </p>
      <Field
        name="value"
        label={w.reading}
        hint={w.readingHint}
        value={typed}
        unit={words.trade.unit[survey.setUp.unit]}
        width="short"
        inputMode="decimal"
        attributes={{ enterkeyhint: 'next', autofocus: 'autofocus' }}
        {...ownErrorOf(faults, 'value', w.faults)}
      />
      {graduation === null ? null : (
        <div class="survey-taps" data-graduation={String(graduation.step)} hidden>
          {steps.map((count) => (
            <button
              class="button"
              type="button"
              data-graduations={String(count)}
              aria-label={w.tap(count)}
            >
              {count > 0 ? `+${count}` : `−${-count}`}
            </button>
          ))}
          <button class="button" type="button" data-graduations="0" aria-label={w.zeroName}>
            {w.zero}
          </button>
        </div>
      )}
      <Button label={w.keep} kind="main" size="large" />
      <WaitingReadings page={page} />
      {graduation === null ? null : <Gauge graduation={graduation} />}
      <button class="button" type="button" data-serial hidden>
        {w.serial}
      </button>
    </form>
  )
}

const Done: FC<{ page: SurveyPageProps }> = ({ page }) => (
  <>
    <p class="survey-next">{words.surveys.done}</p>
    <WaitingReadings page={page} />
  </>
)
