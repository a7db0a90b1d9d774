import type { DialPoint } from '../science/runout/dial-point.ts'
import { checkPositions } from './check-positions.ts'
import type { Fields } from './fields.ts'

/** What a program may send of an indicator; wider than any dial. */
export const dialPointBounds = {
  count: { min: 3, max: 2000 },
  angleDeg: { min: -36_000, max: 36_000 },
  valueUm: { min: -1e6, max: 1e6 },
} as const

/** Reads the readings of one turn; three positions at least must differ. */
export function parseDialPoints(fields: Fields, name: string): readonly DialPoint[] {
  const { count, angleDeg, valueUm } = dialPointBounds
  const before = fields.faults.length
  const points = fields.list(name, count).map((part) => {
    part.only('angleDeg', 'valueUm')
    return {
      angleDeg: part.decimal('angleDeg', angleDeg),
      valueUm: part.decimal('valueUm', valueUm),
    }
  })
  if (fields.faults.length > before) return points
  checkPositions(
    fields,
    name,
    points.map((one) => one.angleDeg),
  )
  return points
}
