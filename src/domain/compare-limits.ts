import { type Characteristic, characteristics } from './characteristic.ts'
import type { Limit, LimitConditions, LimitSet } from './limit-set.ts'

/**
 * `differs`: sets ask for different things, `ratio` says by how much; `alone`: one set only;
 * `not-comparable`: nothing in the row is written alike, as per millimetre here and plain there.
 */
export const comparisonKinds = ['differs', 'same', 'alone', 'not-comparable'] as const
export type ComparisonKind = (typeof comparisonKinds)[number]

/** One thing that is limited, with what each of the sets says of it. */
export type LimitComparison = {
  readonly characteristic: Characteristic
  /** Any of the row's limits: they hold for the same. */
  readonly conditions: LimitConditions & Pick<Limit, 'characteristic'>
  /** In the order of the sets; none, or several of a draft whose limits tie. */
  readonly cells: readonly (readonly Limit[])[]
  readonly kind: ComparisonKind
  /** The largest over the smallest; null unless they differ. */
  readonly ratio: number | null
  /** What the ratio is of: what is per millimetre of a size is no length beside plain figures. */
  readonly compared: readonly Limit[]
}

/** Below this two limits are one, written in two units: 3 bands of helium, 34.8 µin. */
const sameRatio = 1.005

/** The limits of several sets side by side, by characteristic and by what they hold for. */
export function compareLimits(sets: readonly LimitSet[]): readonly LimitComparison[] {
  const limits = sets.flatMap((set) => set.limits)
  return characteristics.flatMap((characteristic) => {
    const own = limits.filter((one) => one.characteristic === characteristic)
    const keys = [...new Set(own.map(keyOf))]
    return keys.map((key) => rowOf(sets, key, own.find((one) => keyOf(one) === key) as Limit))
  })
}

function keyOf(limit: Limit): string {
  return JSON.stringify([
    limit.characteristic,
    limit.faceMaterial,
    limit.componentKind,
    limit.service,
    limit.diameterOverMm,
    limit.diameterUpToMm,
    limit.pressureOverKPa,
    limit.pressureUpToKPa,
    limit.speedOverPerMin,
    limit.speedUpToPerMin,
  ])
}

function rowOf(sets: readonly LimitSet[], key: string, conditions: Limit): LimitComparison {
  const cells = sets.map((set) => set.limits.filter((one) => keyOf(one) === key))
  const { characteristic } = conditions
  const of = { characteristic, conditions, cells, ratio: null, compared: [] }
  if (cells.filter((cell) => cell.length > 0).length < 2) return { ...of, kind: 'alone' }
  const named = cells.flat()
  const alike = [...new Set(named.map((one) => one.perMmOf))].map((size) => {
    const compared = named.filter((one) => one.perMmOf === size)
    return { compared, ratio: Math.max(ratioOf(compared, 'upper'), ratioOf(compared, 'lower')) }
  })
  const widest = alike.reduce((one, other) => (other.ratio > one.ratio ? other : one))
  if (widest.ratio === 0) return { ...of, kind: 'not-comparable' }
  return widest.ratio <= sameRatio ? { ...of, kind: 'same' } : { ...of, kind: 'differs', ...widest }
}

/** The largest over the smallest; 0 where fewer than two have a limit on that side. */
function ratioOf(limits: readonly Limit[], side: 'lower' | 'upper'): number {
  const values = limits.map((one) => one[side]).filter((one) => one !== null)
  return values.length < 2 ? 0 : Math.max(...values) / Math.min(...values)
}
