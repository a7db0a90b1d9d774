import { requireFinite } from '../check/require-finite.ts'

/**
 * Gives how bright a face looks through an optical flat where a band of this order lies, as a share
 * of the brightest place.
 *
 * intensity = (1 - cos(2 pi order)) / 2
 *
 * @param order light bands from contact, with their fraction, as bandOrder gives them
 * @returns from 0 in the middle of a dark band, contact among them, to 1 half way between two
 * @throws RangeError when the order is not finite
 * Validity: two beams of equal strength; glass on a metal face shows less contrast, at the same
 *   places.
 * Source: two-beam interference, one of the two reflections turning the wave by half.
 * @example twoBeamIntensity(2.25) // 0.5000
 */
export function twoBeamIntensity(order: number): number {
  requireFinite('twoBeamIntensity', 'order', order)
  return (1 - Math.cos(2 * Math.PI * order)) / 2
}
