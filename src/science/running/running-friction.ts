import { requireRange } from '../check/require-range.ts'

export interface RunningFriction {
  readonly powerW: number
  /** Null where the faces are not pressed together. */
  readonly frictionCoefficient: number | null
}

const name = 'runningFriction'

/**
 * Gives the friction of running faces from the torque that they take.
 *
 * P = T 2 pi n / 60; f = T / (load D_m / 2)
 *
 * @param input torqueNm: from 0 to 1e6, less what the rig takes alone; speedPerMin: from 0 to 200 000;
 *   faceLoadN: as runningDuty, any; meanDiameterMm: from 1 to 5000
 * @returns W; coefficient
 * @throws RangeError outside these ranges
 * Validity: the torque of the faces alone: bearings, stirring and secondary seals are tared. With two
 *   pairs of faces it is of both.
 * Source: definition of power and of a coefficient of friction.
 * @example runningFriction({ torqueNm: 1, speedPerMin: 3000, faceLoadN: 300, meanDiameterMm: 60 }).powerW
 *   // 314.2
 */
export function runningFriction(input: {
  readonly torqueNm: number
  readonly speedPerMin: number
  readonly faceLoadN: number
  readonly meanDiameterMm: number
}): RunningFriction {
  const { torqueNm, speedPerMin, faceLoadN, meanDiameterMm } = input
  requireRange(name, 'torqueNm', torqueNm, { from: 0, to: 1e6 })
  requireRange(name, 'speedPerMin', speedPerMin, { from: 0, to: 200_000 })
  requireRange(name, 'faceLoadN', faceLoadN, { from: -1e12, to: 1e12 })
  requireRange(name, 'meanDiameterMm', meanDiameterMm, { from: 1, to: 5000 })
  return {
    powerW: (torqueNm * 2 * Math.PI * speedPerMin) / 60,
    frictionCoefficient: faceLoadN > 0 ? torqueNm / (faceLoadN * (meanDiameterMm / 2000)) : null,
  }
}
