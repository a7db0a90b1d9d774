import type { FC } from 'hono/jsx'
import type { Limit } from '../../src/domain/limit-set.ts'
import { limitText } from '../figures/limit-text.ts'
import { words } from '../words/en.ts'

/** A limit with what it is founded on; never one without the other. */
export const LimitSource: FC<{ limit: Limit | null; label?: string }> = ({ limit, label }) => (
  <p class="small soft">
    {label === undefined ? null : <span class="strong">{label}: </span>}
    {limit === null
      ? words.trade.why['no-limit']
      : `${limitText(limit)}. ${limit.asWritten}. ${basisOf(limit)}`}
  </p>
)

function basisOf(limit: Limit): string {
  return `${words.trade.limitBasis[limit.basis]}: ${limit.source}`
}
