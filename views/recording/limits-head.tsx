import type { FC } from 'hono/jsx'
import { words } from '../words/en.ts'

/** Over the limits that a recording is held against: their set, and why they apply. */
export const LimitsHead: FC<{ setName: string; number: string }> = ({ setName, number }) => (
  <>
    <h2 class="section-head">{words.recording.limitsTitle}</h2>
    <p>
      {words.recording.limitSet}: {setName}
      <a class="link-line" href={`/work-orders/${number}/limits`}>
        {words.limitReasons.link}
      </a>
    </p>
  </>
)
