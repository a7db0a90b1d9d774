import { requireRange } from '../check/require-range.ts'

/** How far a face is from square. */
export interface FaceTilt {
  readonly tiltMrad: number
  readonly tiltDeg: number
  /** The same as a slope: mm of height per m of width. */
  readonly mmPerM: number
  /** Height that the tilt moves through in a turn at the seal; null where its diameter is not known. */
  readonly movementAtSealUm: number | null
}

const diameters = { from: 0.1, to: 1e5 } as const

/**
 * Gives the tilt of a face from the first wave of a sweep over it.
 *
 * tilt = atan(2 amplitude / sweptDiameter); movementAtSeal = 2 amplitude x sealMeanDiameter /
 * sweptDiameter
 *
 * @param input amplitudeUm: 0 or more; sweptDiameterMm: of the circle that the tip ran on, from 0.1
 *   to 1e5; sealMeanDiameterMm: the same range, absent where it is not known
 * @returns mrad, degrees, mm per m, um
 * @throws RangeError outside these ranges
 * Validity: of the flat part of the face; axial float of the shaft adds to the sweep unless it is
 *   held or separated (separateEndFloat).
 * Source: geometry; 0.08 mm at 140 mm is 0.571 mrad = 0.0327 degrees.
 * @example faceTilt({ amplitudeUm: 40, sweptDiameterMm: 140 }).tiltMrad // 0.5714
 */
export function faceTilt(input: {
  readonly amplitudeUm: number
  readonly sweptDiameterMm: number
  readonly sealMeanDiameterMm?: number | undefined
}): FaceTilt {
  const { amplitudeUm, sweptDiameterMm, sealMeanDiameterMm } = input
  requireRange('faceTilt', 'amplitudeUm', amplitudeUm, { from: 0, to: 1e9 })
  requireRange('faceTilt', 'sweptDiameterMm', sweptDiameterMm, diameters)
  if (sealMeanDiameterMm !== undefined) {
    requireRange('faceTilt', 'sealMeanDiameterMm', sealMeanDiameterMm, diameters)
  }
  const mmPerM = (2 * amplitudeUm) / sweptDiameterMm
  const tiltRad = Math.atan(mmPerM / 1000)
  return {
    tiltMrad: tiltRad * 1000,
    tiltDeg: (tiltRad * 180) / Math.PI,
    mmPerM,
    movementAtSealUm: sealMeanDiameterMm === undefined ? null : mmPerM * sealMeanDiameterMm,
  }
}
