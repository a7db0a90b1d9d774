import { requireRange } from '../check/require-range.ts'

/** A pair of faces that runs; the narrower face counts. */
export interface RunningFace {
  readonly outerDiameterMm: number
  readonly innerDiameterMm: number
  readonly speedPerMin: number
  /** Sealed pressure above the low side. */
  readonly differenceMPa: number
  /** Hydraulically loaded area over face area, B. */
  readonly balanceRatio: number
  /** Share of the difference that stands in the gap on average, K; 0.5 when absent: a parallel film. */
  readonly pressureFactor?: number | undefined
  readonly springPressureMPa: number
}

export interface RunningDuty {
  /** At the mean diameter of the face. */
  readonly slidingSpeedMPerS: number
  /** What presses the faces together, less what the film carries. */
  readonly facePressureMPa: number
  readonly pressureVelocityMPaMPerS: number
  /** Of the faces on each other: face pressure times area. */
  readonly faceLoadN: number
}

const name = 'runningDuty'

/**
 * Gives sliding speed, face pressure and their product for a running pair of faces.
 *
 * v = pi D_m n / 60; p = dp (B - K) + p_spring; PV = p v; load = p pi (Do^2 - Di^2) / 4
 *
 * @param face diameters from 1 to 5000 mm, inner below outer; speedPerMin from 0 to 200 000;
 *   differenceMPa and springPressureMPa from 0 to 1000; balanceRatio from 0 to 3; pressureFactor from
 *   0 to 1
 * @returns m/s, MPa, MPa m/s, N; a face pressure below 0 means that the film opens the faces
 * @throws RangeError outside these ranges
 * Validity: a flat film that fills the gap. Limits of PV are for their pair of materials and a life.
 * Source: Pump Handbook, chapter on seals: PV = [dp (B - K) + p_sp] v.
 * @example runningDuty({ outerDiameterMm: 58, innerDiameterMm: 50, speedPerMin: 2950, differenceMPa: 1,
 *   balanceRatio: 0.75, springPressureMPa: 0.15 }).facePressureMPa // 0.4000
 */
export function runningDuty(face: RunningFace): RunningDuty {
  const { outerDiameterMm: outer, innerDiameterMm: inner, pressureFactor = 0.5 } = face
  requireRange(name, 'outerDiameterMm', outer, { from: 1, to: 5000 })
  requireRange(name, 'innerDiameterMm', inner, { from: 0.1, to: outer })
  if (inner === outer) throw new RangeError(`${name} requires innerDiameterMm below the outer`)
  requireRange(name, 'speedPerMin', face.speedPerMin, { from: 0, to: 200_000 })
  requireRange(name, 'differenceMPa', face.differenceMPa, { from: 0, to: 1000 })
  requireRange(name, 'springPressureMPa', face.springPressureMPa, { from: 0, to: 1000 })
  requireRange(name, 'balanceRatio', face.balanceRatio, { from: 0, to: 3 })
  requireRange(name, 'pressureFactor', pressureFactor, { from: 0, to: 1 })
  const slidingSpeedMPerS = (Math.PI * ((outer + inner) / 2000) * face.speedPerMin) / 60
  const facePressureMPa =
    face.differenceMPa * (face.balanceRatio - pressureFactor) + face.springPressureMPa
  return {
    slidingSpeedMPerS,
    facePressureMPa,
    pressureVelocityMPaMPerS: facePressureMPa * slidingSpeedMPerS,
    // MPa times mm2 are N.
    faceLoadN: facePressureMPa * (Math.PI / 4) * (outer * outer - inner * inner),
  }
}
