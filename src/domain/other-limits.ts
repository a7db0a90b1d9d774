import type { Characteristic } from './characteristic.ts'
import { isWithinLimits } from './is-within-limits.ts'
import type { LimitCase } from './limit-case.ts'
import { type AppliedLimit, limitFor } from './limit-for.ts'
import type { LimitSet } from './limit-set.ts'

/** What one set would say of a result. */
export type OtherLimit = {
  readonly set: LimitSet
  readonly applied: AppliedLimit
  /** By plain comparison; null: its limit is per millimetre of a size that is not known. */
  readonly isWithin: boolean | null
  /** Whether the order is judged by this set. */
  readonly isOwn: boolean
}

export type LimitConflict = {
  readonly limits: readonly OtherLimit[]
  /** The largest upper limit over the smallest; null with fewer than two. */
  readonly ratio: number | null
  /** Whether one set would pass what another refuses. */
  readonly isContested: boolean
}

/**
 * What every set would say of a result: the order's own first. Only sets that limit it are told.
 * @param sets those in force and the order's own
 */
export function otherLimits(
  result: { readonly characteristic: Characteristic; readonly value: number },
  of: {
    readonly sets: readonly LimitSet[]
    readonly ownId: number
    readonly limitCase: LimitCase
  },
): LimitConflict {
  const { characteristic, value } = result
  const limits = of.sets
    .flatMap((set): OtherLimit[] => {
      const applied = limitFor(set, characteristic, of.limitCase)
      if (applied === undefined) return []
      const isWithin = applied.isSizeKnown ? isWithinLimits(value, applied) : null
      return [{ set, applied, isWithin, isOwn: set.id === of.ownId }]
    })
    .sort((a, b) => Number(b.isOwn) - Number(a.isOwn))
  const uppers = limits.map((one) => one.applied.upper).filter((one) => one !== null)
  const said = new Set(limits.map((one) => one.isWithin).filter((one) => one !== null))
  return {
    limits,
    ratio: uppers.length < 2 ? null : Math.max(...uppers) / Math.min(...uppers),
    isContested: said.size > 1,
  }
}
