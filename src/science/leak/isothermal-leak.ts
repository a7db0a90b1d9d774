import { requireRange } from '../check/require-range.ts'

/**
 * Gives the leak of a closed volume as if its temperature had not changed, in Pa m3/s of gas at
 * that temperature. Positive when the pressure falls.
 *
 * Q = V (p1 - p2) / dt
 *
 * @param input volumeL V: from 1e-6 to 1e6; pressureDropKPa p1 - p2: from -1e6 to 1e6;
 *   durationS dt: from 1e-6 to 1e9
 * @returns Pa m3/s (1 L kPa/s is 1 Pa m3/s)
 * @throws RangeError outside these ranges
 * Validity: constant temperature. At 271 kPa absolute 1 K looks like a drop of 0.93 kPa.
 * Source: Boyle's law.
 * @example isothermalLeak({ volumeL: 28, pressureDropKPa: 14, durationS: 300 }) // 1.3067
 */
export function isothermalLeak(input: {
  readonly volumeL: number
  readonly pressureDropKPa: number
  readonly durationS: number
}): number {
  const { volumeL, pressureDropKPa, durationS } = input
  requireRange('isothermalLeak', 'volumeL', volumeL, { from: 1e-6, to: 1e6 })
  requireRange('isothermalLeak', 'pressureDropKPa', pressureDropKPa, { from: -1e6, to: 1e6 })
  requireRange('isothermalLeak', 'durationS', durationS, { from: 1e-6, to: 1e9 })
  return (volumeL * pressureDropKPa) / durationS
}
