import { requireRange } from '../check/require-range.ts'

export interface ExpandedVolume {
  readonly volumeL: number
  /** Null where no uncertainty was stated. */
  readonly standardUncertaintyL: number | null
}

const name = 'volumeByExpansion'
const pressures = { from: 0, to: 1e6 } as const

/**
 * Gives an unknown volume from a known one that is filled, then opened to it.
 *
 * V = V_known (p_filled - p_joined) / (p_joined - p_before)
 *
 * u(V)^2 by the three pressures, each known to the same u, and by u(V_known)
 *
 * @param input knownVolumeL: from 1e-6 to 1e6; filledKPaAbs of the known volume before it is opened,
 *   beforeKPaAbs of the unknown one, joinedKPaAbs of both after they came to rest: from 0 to 1e6;
 *   knownVolumeStandardUncertaintyL, pressureStandardUncertaintyKPa: 0 or more, absent where not known
 * @returns L
 * @throws RangeError outside these ranges, and unless joined lies between before and filled
 * Validity: ideal gas at one temperature: wait until the heat of the expansion is gone. Best where both
 *   volumes are alike.
 * Source: ideal gas, mass balance; JCGM 100:2008, equation (10).
 * @example volumeByExpansion({ knownVolumeL: 1, filledKPaAbs: 300, joinedKPaAbs: 180, beforeKPaAbs:
 *   101.325 }).volumeL // 1.525
 */
export function volumeByExpansion(input: {
  readonly knownVolumeL: number
  readonly filledKPaAbs: number
  readonly joinedKPaAbs: number
  readonly beforeKPaAbs: number
  readonly knownVolumeStandardUncertaintyL?: number | undefined
  readonly pressureStandardUncertaintyKPa?: number | undefined
}): ExpandedVolume {
  const { knownVolumeL, filledKPaAbs: filled, joinedKPaAbs: joined, beforeKPaAbs: before } = input
  requireRange(name, 'knownVolumeL', knownVolumeL, { from: 1e-6, to: 1e6 })
  requireRange(name, 'filledKPaAbs', filled, pressures)
  requireRange(name, 'beforeKPaAbs', before, pressures)
  requireRange(name, 'joinedKPaAbs', joined, pressures)
  const isBetween = (joined - before) * (filled - joined) > 0
  if (!isBetween) throw new RangeError(`${name} requires joined between before and filled`)
  const { knownVolumeStandardUncertaintyL: uKnown, pressureStandardUncertaintyKPa: uP } = input
  const rise = joined - before
  const volumeL = (knownVolumeL * (filled - joined)) / rise
  if (uKnown === undefined && uP === undefined) return { volumeL, standardUncertaintyL: null }
  const uPressure = requireRange(name, 'pressureStandardUncertaintyKPa', uP ?? 0, pressures)
  const uVolume = requireRange(name, 'knownVolumeStandardUncertaintyL', uKnown ?? 0, pressures)
  const perKPa = knownVolumeL / rise
  const share = (filled - joined) / rise
  return {
    volumeL,
    standardUncertaintyL: Math.hypot(
      share * uVolume,
      perKPa * uPressure,
      perKPa * (1 + share) * uPressure,
      perKPa * share * uPressure,
    ),
  }
}
