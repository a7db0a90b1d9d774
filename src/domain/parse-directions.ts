import { bowOverSpacingBands } from '../science/optics/bow-over-spacing-bands.ts'
import type { Fields } from './fields.ts'
import { type BandPattern, type DirectionReading, flatnessBounds } from './flatness.ts'

/** Of one band on a picture or under a scale. */
export const bowBounds = {
  bowMm: { min: 0, max: 1000 },
  spacingMm: { min: 0.01, max: 1000 },
} as const

/**
 * Reads the counts, one for each direction. A count is entered, or a bow and a spacing; straight
 * bands are zero by their pattern, so their count may stay empty but may not be another. A saddle
 * is the sum of two directions and needs both. Without a pattern (its field was faulty) the counts
 * are looked at all the same.
 */
export function parseDirections(
  fields: Fields,
  pattern: BandPattern | null,
): readonly DirectionReading[] {
  const { min, max } = flatnessBounds.directionCount
  const isUnreadable = pattern === 'unreadable'
  const parts = fields.list('readings', { min: isUnreadable ? 0 : min, max })
  const directions: DirectionReading[] = []
  for (const part of parts) {
    part.only('directionDeg', 'bands', 'bowMm', 'spacingMm')
    const isCounted = ['bands', 'bowMm', 'spacingMm'].some((name) => part.isGiven(name))
    if (isUnreadable && !isCounted) continue
    const direction = parseDirection(part, pattern)
    if (directions.some((one) => isSameDirection(one, direction, 360))) {
      part.fault('directionDeg', 'taken')
    }
    directions.push(direction)
  }
  if (pattern === 'saddle' && fields.faults.length === 0 && directionCount(directions) < 2) {
    fields.fault('readings', 'too-few', { min: 2, max })
  }
  return directions
}

/** How many directions were read; 0 and 180 degrees are the same line across the face. */
export function directionCount(directions: readonly Direction[]): number {
  return directions.filter(
    (one, index) => !directions.slice(0, index).some((other) => isSameDirection(one, other, 180)),
  ).length
}

type Direction = Pick<DirectionReading, 'directionDeg'>

function isSameDirection(a: Direction, b: Direction, turnDeg: number): boolean {
  return a.directionDeg % turnDeg === b.directionDeg % turnDeg
}

function parseDirection(part: Fields, pattern: BandPattern | null): DirectionReading {
  const directionDeg = part.decimal('directionDeg', flatnessBounds.directionDeg)
  if (part.isGiven('bowMm') || part.isGiven('spacingMm')) {
    return { directionDeg, ...parseBow(part) }
  }
  if (pattern !== 'straight') {
    const bands = part.decimal('bands', flatnessBounds.bands)
    return { directionDeg, bands, bandsTyped: part.typed('bands').trim() }
  }
  const bands = part.optionalDecimal('bands', { min: 0, max: 0 }) ?? 0
  return { directionDeg, bands, bandsTyped: part.typed('bands').trim() }
}

/** `bandsTyped` keeps the measured lengths: `4.5 mm / 6.0 mm`. */
function parseBow(part: Fields): Pick<DirectionReading, 'bands' | 'bandsTyped'> {
  const before = part.faults.length
  const bowMm = part.decimal('bowMm', bowBounds.bowMm)
  const spacingMm = part.decimal('spacingMm', bowBounds.spacingMm)
  if (part.isGiven('bands')) part.fault('bands', 'one-of-two', { one: 'bands', other: 'bowMm' })
  if (part.faults.length > before) return { bands: 0, bandsTyped: '' }
  const bands = bowOverSpacingBands({ bowMm, spacingMm })
  const { max } = flatnessBounds.bands
  if (bands > max) part.fault('bowMm', 'above', { min: 0, max: max * spacingMm })
  const bandsTyped = `${part.typed('bowMm').trim()} mm / ${part.typed('spacingMm').trim()} mm`
  return { bands, bandsTyped }
}
