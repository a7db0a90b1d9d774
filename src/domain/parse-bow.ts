import type { Fields } from './fields.ts'
import type { BowInput } from './flatness-budget-input.ts'

export const bowInputBounds = {
  deltaK: { min: -1000, max: 1000 },
  expansionPerK: { min: -1e-3, max: 1e-3 },
  expansionUmPerMK: { min: -1000, max: 1000 },
  lengthMm: { min: 0.1, max: 10_000 },
} as const

/**
 * Reads a temperature difference through a ring or a flat. The expansion is per kelvin, or, as
 * people know it, in µm by metre and kelvin; never both.
 */
export function parseBow(part: Fields): BowInput {
  const { deltaK, expansionPerK, expansionUmPerMK, lengthMm } = bowInputBounds
  part.only('deltaK', 'expansionPerK', 'expansionUmPerMK', 'diameterMm', 'thicknessMm')
  const isInUm = part.isGiven('expansionUmPerMK')
  if (isInUm && part.isGiven('expansionPerK')) {
    part.fault('expansionPerK', 'one-of-two', { one: 'expansionPerK', other: 'expansionUmPerMK' })
  }
  return {
    deltaK: part.decimal('deltaK', deltaK),
    expansionPerK: isInUm
      ? part.decimal('expansionUmPerMK', expansionUmPerMK) / 1e6
      : part.decimal('expansionPerK', expansionPerK),
    diameterMm: part.decimal('diameterMm', lengthMm),
    thicknessMm: part.decimal('thicknessMm', lengthMm),
  }
}
