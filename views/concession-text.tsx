import type { FC } from 'hono/jsx'
import type { Concession } from '../src/domain/concession.ts'
import { minuteText } from './figures/time-text.ts'
import { words } from './words/en.ts'

const w = words.inspection.concession

/** A recorded concession: why, where the customer agreed, by whom. */
export const ConcessionText: FC<{ concession: Concession }> = ({ concession }) => (
  <div class="concession">
    <p class="strong">{w.title}</p>
    <p>{concession.reason}</p>
    <p class="cell-detail">
      {w.recorded(concession.customerReference, concession.byName, minuteText(concession.at))}
    </p>
  </div>
)
