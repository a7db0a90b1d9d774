import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'

/**
 * Takes the sag of a bracket out of a reading: carried round a lying shaft, it droops, and the
 * needle moves though the surface is true.
 *
 * value - sag x (1 - cos(angle - topAngle)) / 2
 *
 * @param input valueUm: as read; angleDeg: where; topAngleDeg: the position with the bracket on
 *   top; sagUm: what the needle shows below, set to 0 on top, on a mandrel that is true: from -1e4
 *   to 1e4
 * @returns um, as a bracket that doesn't droop would read
 * @throws RangeError outside these ranges
 * Validity: the bracket droops in proportion to the weight across it, so that the sag follows the
 *   cosine of the angle. None is due where the part turns under a standing indicator.
 * Source: common practice, no source; the cosine is statics.
 * @example sagCorrectedUm({ valueUm: -30, angleDeg: 180, topAngleDeg: 0, sagUm: -20 }) // -10
 */
export function sagCorrectedUm(input: {
  readonly valueUm: number
  readonly angleDeg: number
  readonly topAngleDeg: number
  readonly sagUm: number
}): number {
  const { valueUm, angleDeg, topAngleDeg, sagUm } = input
  for (const value of [valueUm, angleDeg, topAngleDeg]) {
    requireFinite('sagCorrectedUm', 'valueUm and angles', value)
  }
  requireRange('sagCorrectedUm', 'sagUm', sagUm, { from: -1e4, to: 1e4 })
  return valueUm - (sagUm * (1 - Math.cos(((angleDeg - topAngleDeg) * Math.PI) / 180))) / 2
}
