import type { FC } from 'hono/jsx'
import type { DialSurvey } from '../../src/domain/dial-survey.ts'
import { Caution } from '../components/caution.tsx'
import { words } from '../words/en.ts'

/** Stands before anything that makes somebody turn, lift or set down a shaft. */
export const SurveyCaution: FC<{
  /** Of which survey; null while that is still chosen: then everything is told. */
  survey: Pick<DialSurvey, 'characteristic' | 'setUp'> | null
}> = ({ survey }) => {
  const { cautionTitle, caution, cautionMore } = words.surveys
  const isLifted = survey === null || survey.characteristic === 'radial-lift'
  const isOnBench = survey === null || isBench(survey.setUp.place)
  const [first, ...rest] = caution
  return (
    <div class="question">
      <Caution sign={words.chrome.caution} title={cautionTitle}>
        <p>{first}</p>
        {isLifted ? <p>{cautionMore.lifting}</p> : null}
        {isOnBench ? <p>{cautionMore.heavy}</p> : null}
        {rest.map((text) => (
          <p>{text}</p>
        ))}
      </Caution>
    </div>
  )
}

function isBench(place: DialSurvey['setUp']['place']): boolean {
  return place === 'between-centres' || place === 'vee-blocks'
}
