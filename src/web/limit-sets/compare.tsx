import { LimitComparisonPage } from '../../../views/limit-comparison-page.tsx'
import { compareLimits } from '../../domain/compare-limits.ts'
import type { LimitSet } from '../../domain/limit-set.ts'
import { limitSetState } from '../../domain/limit-set-state.ts'
import { offeredLimitSets } from '../../domain/offered-limit-sets.ts'
import { listLimitSets } from '../../store/list-limit-sets.ts'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { today } from '../today.ts'

/** More limits than these no drawing of a row takes. */
const setCountAtMost = 12

/** The limits of the sets that are asked for, else of all that are offered, side by side. */
export function compareLimitSets(c: AppContext): Promise<Response> {
  const all = listLimitSets(c.var.shop.store)
  const asked = c.req.queries('sets') ?? []
  const named = all.filter((one) => asked.includes(String(one.id)))
  const byDefault = offeredLimitSets(all, today(c))
  const chosen = (asked.length > 0 ? named : byDefault).slice(0, setCountAtMost)
  const page = (
    <LimitComparisonPage
      frame={frameOf(c)}
      all={all.filter((one) => isWorthComparing(one, today(c)))}
      chosen={chosen}
      rows={compareLimits(chosen)}
    />
  )
  return sendPage(c, page)
}

/** What is retired is looked at on its own page. */
function isWorthComparing(set: LimitSet, day: string): boolean {
  return limitSetState(set, day) !== 'retired'
}
