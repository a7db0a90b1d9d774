import { atMost } from '../science/acceptance/at-most.ts'
import type { LimitCase } from './limit-case.ts'
import {
  type ConditionName,
  isRangeName,
  isStated,
  type RangeName,
  rangeOf,
} from './limit-conditions.ts'
import type { LimitConditions } from './limit-set.ts'

/** `not-asked` and `holds` let a limit match; what is not known in the case does not hold. */
export type ConditionStanding = 'not-asked' | 'holds' | 'differs' | 'not-known'

const readIn: Readonly<Record<RangeName, (of: LimitCase) => number | null>> = {
  diameter: ({ diameterMm }) => diameterMm,
  pressure: ({ pressureKPa }) => pressureKPa,
  speed: ({ speedPerMin }) => speedPerMin,
}

/** How one condition of a limit stands to a case: over < x ≤ up to, names alike. */
export function conditionStanding(
  limit: LimitConditions,
  name: ConditionName,
  limitCase: LimitCase,
): ConditionStanding {
  if (!isStated(limit, name)) return 'not-asked'
  if (!isRangeName(name)) {
    const known = limitCase[name]
    if (known === null) return 'not-known'
    return known === limit[name] ? 'holds' : 'differs'
  }
  const value = readIn[name](limitCase)
  if (value === null) return 'not-known'
  const { over, upTo } = rangeOf(limit, name)
  const isOver = over === null || !atMost({ value, limit: over })
  return isOver && (upTo === null || atMost({ value, limit: upTo })) ? 'holds' : 'differs'
}
