import { requireRange } from '../check/require-range.ts'

/**
 * Gives the departure from straightness of a band, in bands: its bow over the spacing.
 *
 * bands = bowMm / spacingMm
 *
 * @param input bowMm: bow of one band from its chord, from 0 to 1000;
 *   spacingMm: distance from the middle of one band to the next, from 0.01 to 1000
 * @returns light bands, with their fraction
 * @throws RangeError outside these ranges
 * Validity: evenly spaced bands. Where bands crowd (cones, turned edges) the spacing is not one
 *   number and the figure is too high or too low by as much as the spacing varies.
 * Source: textbook rule of optical-flat reading (from memory).
 * @example bowOverSpacingBands({ bowMm: 4.5, spacingMm: 6 }) // 0.75
 */
export function bowOverSpacingBands(input: {
  readonly bowMm: number
  readonly spacingMm: number
}): number {
  requireRange('bowOverSpacingBands', 'bowMm', input.bowMm, { from: 0, to: 1000 })
  requireRange('bowOverSpacingBands', 'spacingMm', input.spacingMm, { from: 0.01, to: 1000 })
  return input.bowMm / input.spacingMm
}
