import type { Bounds, Fields } from './fields.ts'

/**
 * Reads a number that is typed beside its unit and gives it in the stored one; null where neither
 * is there, or something is wrong with them. One without the other is a fault.
 */
export function readInUnit<Unit extends string>(
  part: Fields,
  how: {
    readonly name: string
    readonly unitName: string
    readonly units: readonly Unit[]
    readonly boundsOf: (unit: Unit) => Bounds
    readonly toStored: (value: number, unit: Unit) => number
  },
): number | null {
  const { name, unitName, units, boundsOf, toStored } = how
  if (!part.isGiven(name) && !part.isGiven(unitName)) return null
  const before = part.faults.length
  const unit = part.choice(unitName, units)
  const isUnitKnown = part.faults.length === before
  const value = part.decimal(name, isUnitKnown ? boundsOf(unit) : anyUnit)
  return part.faults.length > before ? null : toStored(value, unit)
}

const anyUnit = { min: -1e9, max: 1e9 } as const
