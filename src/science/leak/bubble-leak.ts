import { requireRange } from '../check/require-range.ts'

/**
 * Gives the leak of gas from bubbles that were counted under water.
 *
 * q = n (pi / 6) d^3 / t, of gas at the pressure and temperature of the bath
 *
 * @param input bubblesCount: from 0 to 1e6; elapsedS: from 1 to 1e6; diameterMm: from 0.1 to 20
 * @returns mL per s; with half and half again: a count of bubbles is good to about 50 %
 * @throws RangeError outside these ranges
 * Validity: an estimate of size; the diameter of a bubble is a guess, and goes with its cube.
 * Source: volume of a sphere; +-50 % is common practice, no source. A supplier's table has 24 bubbles of
 *   2 mm a second for 0.1 mL/s.
 * @example bubbleLeak({ bubblesCount: 24, elapsedS: 1, diameterMm: 2 }).leakMlPerS // 0.1005
 */
export function bubbleLeak(input: {
  readonly bubblesCount: number
  readonly elapsedS: number
  readonly diameterMm: number
}): { readonly leakMlPerS: number; readonly halfWidthMlPerS: number } {
  const name = 'bubbleLeak'
  const { bubblesCount, elapsedS, diameterMm } = input
  requireRange(name, 'bubblesCount', bubblesCount, { from: 0, to: 1e6 })
  requireRange(name, 'elapsedS', elapsedS, { from: 1, to: 1e6 })
  requireRange(name, 'diameterMm', diameterMm, { from: 0.1, to: 20 })
  const leakMlPerS = (bubblesCount * (Math.PI / 6) * diameterMm ** 3) / 1000 / elapsedS
  return { leakMlPerS, halfWidthMlPerS: leakMlPerS / 2 }
}
