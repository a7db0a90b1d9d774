import type { DialPoint } from '../science/runout/dial-point.ts'
import { distinctAngles } from '../science/runout/distinct-angles.ts'
import type { Fields } from './fields.ts'

/** What a program may send of an indicator; wider than any dial. */
export const dialPointBounds = {
  count: { min: 3, max: 10_000 },
  angleDeg: { min: -36_000, max: 36_000 },
  valueUm: { min: -1e6, max: 1e6 },
  positionCount: { min: 3, max: 10_000 },
} as const

/** Reads the readings of one turn; three positions at least must differ. */
export function parseDialPoints(fields: Fields, name: string): readonly DialPoint[] {
  const { count, angleDeg, valueUm, positionCount } = dialPointBounds
  const before = fields.faults.length
  const points = fields.list(name, count).map((part) => {
    part.only('angleDeg', 'valueUm')
    return {
      angleDeg: part.decimal('angleDeg', angleDeg),
      valueUm: part.decimal('valueUm', valueUm),
    }
  })
  if (fields.faults.length > before) return points
  if (distinctAngles(points.map((one) => one.angleDeg)).length < positionCount.min) {
    fields.fault(name, 'too-few-positions', positionCount)
  }
  return points
}
