import type { Characteristic } from './characteristic.ts'
import type { Limit, LimitSet } from './limit-set.ts'

/**
 * The limit that holds for a characteristic: the one written for the face's material before the
 * general one. Undefined where the set has none: nothing is then judged.
 */
export function limitFor(
  limitSet: LimitSet,
  characteristic: Characteristic,
  faceMaterial: string | null,
): Limit | undefined {
  const limits = limitSet.limits.filter((one) => one.characteristic === characteristic)
  const special = limits.find(
    (one) => one.faceMaterial !== null && one.faceMaterial === faceMaterial,
  )
  return special ?? limits.find((one) => one.faceMaterial === null)
}
