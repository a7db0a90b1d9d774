import type { FC } from 'hono/jsx'
import { Button } from '../components/button.tsx'
import { words } from '../words/en.ts'
import type { SurveyPageProps } from './page-props.ts'

/**
 * Where the script says what it could not record: readings that wait in this browser, why, and of
 * whom, also on the page of a survey that has ended. Without a script nothing waits.
 */
export const WaitingReadings: FC<{ page: Pick<SurveyPageProps, 'reader' | 'survey'> }> = (
  props,
) => {
  const { reader, survey } = props.page
  const w = words.surveys
  return (
    <div
      class="survey-waiting"
      data-survey-waiting
      data-reader-id={String(reader.id)}
      data-reader-name={reader.name}
      data-unit={survey.setUp.unit}
      data-serial-on={w.serialOn}
      data-serial-bad={w.serialBad}
      data-serial-unit={w.serialUnit}
      data-serial-idle={w.serialIdle}
      data-serial-end={w.serialEnd}
      data-says={JSON.stringify(w.waitingSays)}
    >
      <p class="small" data-survey-told role="status"></p>
      <p class="field-error" data-survey-left-out role="alert"></p>
      <div class="survey-kept" data-waiting="own" hidden>
        <p data-waiting-why role="status"></p>
        <ul class="survey-kept-list" data-waiting-list></ul>
        <Button label={w.sendAgain} type="button" attributes={{ 'data-waiting-again': '' }} />
      </div>
      <div class="survey-kept" data-waiting="others" hidden>
        <p data-waiting-why></p>
      </div>
      <div class="survey-kept" data-waiting="nameless" hidden>
        <p data-waiting-why></p>
        <Button
          label={w.discardNameless}
          kind="stop"
          type="button"
          attributes={{ 'data-discard-nameless': '' }}
        />
      </div>
      <template data-waiting-line>
        <li>
          <span>
            <strong data-line-value>{`# ${words.trade.unit[survey.setUp.unit]}`}</strong>{' '}
            <span data-line-where></span>
          </span>
          <Button label={w.discard} kind="stop" type="button" attributes={{ 'data-discard': '' }} />
        </li>
      </template>
    </div>
  )
}
