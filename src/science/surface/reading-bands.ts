import { requireRange } from '../check/require-range.ts'
import { bowOverSpacingBands } from '../optics/bow-over-spacing-bands.ts'

/** One reading along one direction: a count, or a bow and a spacing measured on a picture. */
export type CountedReading =
  | { readonly directionDeg: number; readonly bands: number }
  | { readonly directionDeg: number; readonly bowMm: number; readonly spacingMm: number }

/**
 * Gives the bands of one reading, whichever way it was taken.
 *
 * bands, or bowMm / spacingMm
 *
 * @param reading directionDeg: from -360 to 360; bands: from 0 to 1000; or bowMm from 0 to 1000 and
 *   spacingMm from 0.01 to 1000
 * @returns light bands, with their fraction
 * @throws RangeError outside these ranges
 * Source: as bowOverSpacingBands.
 * @example readingBands({ directionDeg: 0, bowMm: 4.5, spacingMm: 6 }) // 0.75
 */
export function readingBands(reading: CountedReading): number {
  requireRange('readingBands', 'directionDeg', reading.directionDeg, { from: -360, to: 360 })
  if ('bowMm' in reading) return bowOverSpacingBands(reading)
  return requireRange('readingBands', 'bands', reading.bands, { from: 0, to: 1000 })
}
