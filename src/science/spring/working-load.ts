import { requireRange } from '../check/require-range.ts'
import { requireWhole } from '../check/require-whole.ts'

/** Springs as they stand in the seal. */
export interface WorkingSprings {
  /** How many press on the face together. */
  readonly springsCount: number
  readonly rateNPerMm: number
  readonly freeLengthMm: number
  readonly workingLengthMm: number
  /** With coils closed, or the shortest that the seal allows; absent where not known. */
  readonly solidLengthMm?: number | undefined
  /** Of the face that they close; both or none. */
  readonly faceOuterDiameterMm?: number | undefined
  readonly faceInnerDiameterMm?: number | undefined
}

/** What they do there. */
export interface WorkingLoad {
  readonly loadN: number
  /** Null where the face is not known. */
  readonly facePressureMPa: number | null
  /** From the working length to the solid one; null where that is not known. */
  readonly remainingTravelMm: number | null
  /** Change of the load for a mm of end play, or of height lapped off the faces. */
  readonly loadPerMmN: number
}

const name = 'workingLoad'
const lengths = { from: 0.1, to: 10_000 } as const

/**
 * Gives the load of the springs at their working length, and the pressure on the face that follows.
 *
 * load = springs x rate x (free - working length); pressure = load / (pi (Do^2 - Di^2) / 4)
 *
 * @param input springsCount: whole, from 1 to 1000; rateNPerMm: of one spring, from 1e-9 to 1e9;
 *   lengths from 0.1 to 10 000 mm, solid <= working <= free; diameters from 0.1 to 10 000 mm, inner
 *   below outer
 * @returns N, MPa, mm
 * @throws RangeError outside these ranges
 * Validity: springs alike, in the straight part of their line, without friction of the secondary
 *   seal, which adds to the load one way and takes from it the other.
 * Source: Hooke's law; spring pressure = load / face area, Pump Handbook, chapter on seals.
 * @example workingLoad({ springsCount: 6, rateNPerMm: 3, freeLengthMm: 20, workingLengthMm: 14 }
 *   ).loadN // 108
 */
export function workingLoad(input: WorkingSprings): WorkingLoad {
  const { springsCount, rateNPerMm, freeLengthMm, workingLengthMm, solidLengthMm } = input
  requireWhole(name, 'springsCount', springsCount, { from: 1, to: 1000 })
  requireRange(name, 'rateNPerMm', rateNPerMm, { from: 1e-9, to: 1e9 })
  requireRange(name, 'freeLengthMm', freeLengthMm, lengths)
  const working = { from: solidLengthMm ?? lengths.from, to: freeLengthMm }
  requireRange(name, 'workingLengthMm', workingLengthMm, working)
  if (solidLengthMm !== undefined) requireRange(name, 'solidLengthMm', solidLengthMm, lengths)
  const loadPerMmN = springsCount * rateNPerMm
  const loadN = loadPerMmN * (freeLengthMm - workingLengthMm)
  const areaMm2 = faceAreaMm2(input)
  return {
    loadN,
    facePressureMPa: areaMm2 === null ? null : loadN / areaMm2,
    remainingTravelMm: solidLengthMm === undefined ? null : workingLengthMm - solidLengthMm,
    loadPerMmN,
  }
}

function faceAreaMm2({ faceOuterDiameterMm: outer, faceInnerDiameterMm: inner }: WorkingSprings) {
  if (outer === undefined || inner === undefined) return null
  requireRange(name, 'faceOuterDiameterMm', outer, lengths)
  requireRange(name, 'faceInnerDiameterMm', inner, { from: 0, to: outer })
  if (inner === outer)
    throw new RangeError(`${name} requires faceInnerDiameterMm below the outer, got ${inner}`)
  return (Math.PI * (outer * outer - inner * inner)) / 4
}
