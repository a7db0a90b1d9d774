import { requireRange } from '../check/require-range.ts'

/**
 * Gives the absolute pressure from a gauge reading and the barometer, in kPa.
 *
 * absolute = gaugeKPa + barometerKPa
 *
 * @param input gaugeKPa: gauge reading, from -barometerKPa (full vacuum) to 1e6;
 *   barometerKPa: air pressure at the gauge when it was read, from 30 to 120
 * @returns kPa absolute
 * @throws RangeError outside these ranges
 * Validity: a gauge vented to the room. A sealed gauge shows the barometer of the day it was made.
 * Source: definition of gauge pressure.
 * @example gaugeToAbsoluteKPa({ gaugeKPa: 170, barometerKPa: 101.325 }) // 271.325
 */
export function gaugeToAbsoluteKPa(input: {
  readonly gaugeKPa: number
  readonly barometerKPa: number
}): number {
  const { gaugeKPa, barometerKPa } = input
  requireRange('gaugeToAbsoluteKPa', 'barometerKPa', barometerKPa, { from: 30, to: 120 })
  requireRange('gaugeToAbsoluteKPa', 'gaugeKPa', gaugeKPa, { from: -barometerKPa, to: 1e6 })
  return gaugeKPa + barometerKPa
}
