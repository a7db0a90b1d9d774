import type { FC } from 'hono/jsx'
import { Caution } from '../components/caution.tsx'
import { words } from '../words/en.ts'

/** Stands before anything that makes somebody turn a shaft. */
export const SurveyCaution: FC = () => (
  <div class="question">
    <Caution sign={words.chrome.caution} title={words.surveys.cautionTitle}>
      {words.surveys.caution.map((text) => (
        <p>{text}</p>
      ))}
    </Caution>
  </div>
)
