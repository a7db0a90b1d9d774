import type { SurveyCharacteristic } from './characteristic.ts'
import type { FaceKind } from './seal.ts'

/**
 * `agrees`: the found movement explains the track; `wider`: the track is wider than it explains;
 * `narrower`: it should have been wider; `not-surveyed`: nothing that widens this track was swept;
 * `no-movement`: the track is no wider than the nose.
 */
export const trackVerdicts = ['agrees', 'wider', 'narrower', 'no-movement', 'not-surveyed'] as const
export type TrackVerdict = (typeof trackVerdicts)[number]

/** What was swept and found, um, with its expanded uncertainty; null: not known. */
export type FoundMovement = {
  readonly characteristic: SurveyCharacteristic
  readonly totalUm: number
  readonly expandedUncertaintyUm: number | null
}

export type TrackComparison = {
  readonly verdict: TrackVerdict
  /** Track less nose; below 0 where the track is narrower. */
  readonly movementUm: number
  /** What widens a track on this face for certain, and with what may add to it. */
  readonly found: { readonly leastUm: number; readonly mostUm: number } | null
  /** What was added up: the first is the movement itself, the rest may add to it. */
  readonly counted: readonly FoundMovement[]
  /** By how much the two may differ without a word; null: no uncertainty is known. */
  readonly allowanceUm: number | null
}

/** What sweeps a track of the face: the sleeve carries the seal where there is one. */
const sweeping: Readonly<Record<FaceKind, readonly SurveyCharacteristic[]>> = {
  // The nose turns with the shaft and swings over the standing face.
  'stationary-seat': ['sleeve-run-out', 'shaft-run-out'],
  // The nose stands still beside the axis and sweeps the turning face.
  'rotating-face': ['register-concentricity'],
}

/**
 * Holds a worn track against the movement that surveys found.
 *
 * track - nose = 2 e: on the seat the run-out of what carries the turning nose; on the rotating
 * face the total of the register that holds the standing nose. What the shaft can be lifted by in
 * its bearings may add to either.
 *
 * @param track face that carries it, movement as track less nose, its standard uncertainty
 * @param found surveys that stand; as found is what wore the track
 * Source: geometry; a supply house's page on wear tracks.
 */
export function compareWornTrack(
  track: {
    readonly faceKind: FaceKind
    readonly movementUm: number
    readonly standardUncertaintyUm: number | null
  },
  found: readonly FoundMovement[],
): TrackComparison {
  const { faceKind, movementUm, standardUncertaintyUm } = track
  const of = (characteristic: SurveyCharacteristic) =>
    found.find((one) => one.characteristic === characteristic)
  const main = sweeping[faceKind].map(of).find((one) => one !== undefined)
  const lift = of('radial-lift')
  if (main === undefined) {
    const verdict = movementUm <= 0 ? 'no-movement' : 'not-surveyed'
    return { verdict, movementUm, found: null, counted: [], allowanceUm: null }
  }
  const counted = [main, ...(lift === undefined ? [] : [lift])]
  const leastUm = main.totalUm
  const mostUm = counted.reduce((sum, one) => sum + one.totalUm, 0)
  const known = [
    standardUncertaintyUm === null ? null : 2 * standardUncertaintyUm,
    ...counted.map((one) => one.expandedUncertaintyUm),
  ].filter((one) => one !== null)
  const allowanceUm = known.length === 0 ? null : Math.hypot(...known)
  const verdict = verdictOf(movementUm, { leastUm, mostUm }, allowanceUm ?? 0)
  return { verdict, movementUm, found: { leastUm, mostUm }, counted, allowanceUm }
}

function verdictOf(
  movementUm: number,
  { leastUm, mostUm }: { readonly leastUm: number; readonly mostUm: number },
  allowanceUm: number,
): TrackVerdict {
  if (movementUm > mostUm + allowanceUm) return 'wider'
  if (movementUm >= leastUm - allowanceUm) return 'agrees'
  return movementUm <= 0 ? 'no-movement' : 'narrower'
}
