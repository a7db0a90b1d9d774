import type { Characteristic } from './characteristic.ts'
import { currentOnly } from './current-only.ts'
import type { MeasuredValue } from './measured-value.ts'
import type { WearTrack } from './wear-track.ts'

/** What moves one face sideways against the other, as a dial finds it. */
export const sidewaysCharacteristics: readonly Characteristic[] = [
  'shaft-run-out',
  'sleeve-run-out',
  'radial-lift',
  'register-concentricity',
]

/**
 * What a worn track says beside the surveys: `narrower` than its nose is no movement at all but a
 * finding of its own; `told` by them: they found as much together, or more; `more` than they found.
 */
export type TrackStanding = 'narrower' | 'told' | 'more' | 'not-surveyed'

export type TrackComparison = {
  readonly standing: TrackStanding
  /** All that was found to move it sideways, added up: the most that it could come to. */
  readonly surveyedUm: number | null
}

/**
 * Holds the movement that a track tells against what was found as it came in: run-out of shaft or
 * sleeve, lift and register, the newest of each, added up. A difference within the uncertainty of
 * the track counts as told.
 */
export function trackAgainstSurveys(
  { movementUm, standardUncertaintyUm }: WearTrack,
  values: readonly MeasuredValue[],
): TrackComparison {
  const standing = currentOnly(values)
  const found = sidewaysCharacteristics.flatMap((characteristic) => {
    const alike = standing.filter((one) => one.characteristic === characteristic)
    const asFound = alike.filter((one) => one.condition === 'as-found')
    return (asFound.length > 0 ? asFound : alike).slice(-1)
  })
  const surveyedUm =
    found.length === 0 ? null : found.reduce((sum, { valueUm }) => sum + valueUm, 0)
  const doubtUm = 2 * (standardUncertaintyUm ?? 0)
  if (movementUm < 0) return { standing: 'narrower', surveyedUm }
  if (surveyedUm === null) return { standing: 'not-surveyed', surveyedUm }
  return { standing: movementUm - doubtUm <= surveyedUm ? 'told' : 'more', surveyedUm }
}
