import type { ThermalBow } from '../science/uncertainty/thermal-bow-line.ts'
import type { Fields } from './fields.ts'

export const thermalBounds = {
  deltaK: { min: -1000, max: 1000 },
  expansionPerK: { min: -1e-3, max: 1e-3 },
  lengthMm: { min: 0.1, max: 10_000 },
} as const

/** Reads a temperature difference through a ring or a flat, and what it does to it. */
export function parseThermal(part: Fields): ThermalBow {
  const { deltaK, expansionPerK, lengthMm } = thermalBounds
  part.only('deltaK', 'expansionPerK', 'diameterMm', 'thicknessMm')
  return {
    deltaK: part.decimal('deltaK', deltaK),
    expansionPerK: part.decimal('expansionPerK', expansionPerK),
    diameterMm: part.decimal('diameterMm', lengthMm),
    thicknessMm: part.decimal('thicknessMm', lengthMm),
  }
}
