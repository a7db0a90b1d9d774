import { requireRange } from '../check/require-range.ts'

/**
 * Gives the leakage of a liquid from drops that were counted.
 *
 * q = n V / t; u^2 = q^2 ((u(n) / n)^2 + (u(V) / V)^2), u(n) = 1 / sqrt 6: a count of steady drops is
 * right to one drop either way, triangular
 *
 * @param input dropsCount: from 1 to 1e6; elapsedS: from 1 to 1e8; dropVolumeML: from 0.001 to 1;
 *   dropVolumeStandardUncertaintyML and elapsedStandardUncertaintyS: 0 or more, absent where not known
 * @returns mL per h
 * @throws RangeError outside these ranges
 * Validity: steady dripping. A drop depends on tube, liquid and surface tension: 20 drops to the mL are
 *   common practice without a source; weigh fifty of them.
 * Source: definition; JCGM 100:2008, 4.3.9 and equation (10).
 * @example dropLeak({ dropsCount: 2, elapsedS: 60, dropVolumeML: 0.05 }).leakMlPerH // 6.000
 */
export function dropLeak(input: {
  readonly dropsCount: number
  readonly elapsedS: number
  readonly dropVolumeML: number
  readonly dropVolumeStandardUncertaintyML?: number | undefined
  readonly elapsedStandardUncertaintyS?: number | undefined
}): { readonly leakMlPerH: number; readonly standardUncertaintyMlPerH: number } {
  const name = 'dropLeak'
  const { dropsCount, elapsedS, dropVolumeML } = input
  requireRange(name, 'dropsCount', dropsCount, { from: 1, to: 1e6 })
  requireRange(name, 'elapsedS', elapsedS, { from: 1, to: 1e8 })
  requireRange(name, 'dropVolumeML', dropVolumeML, { from: 0.001, to: 1 })
  const small = { from: 0, to: 1e6 }
  const { dropVolumeStandardUncertaintyML: uDrop = 0, elapsedStandardUncertaintyS: uTime = 0 } =
    input
  requireRange(name, 'dropVolumeStandardUncertaintyML', uDrop, small)
  requireRange(name, 'elapsedStandardUncertaintyS', uTime, small)
  const leakMlPerH = (dropsCount * dropVolumeML * 3600) / elapsedS
  const relative = Math.hypot(1 / Math.sqrt(6) / dropsCount, uDrop / dropVolumeML, uTime / elapsedS)
  return { leakMlPerH, standardUncertaintyMlPerH: leakMlPerH * relative }
}
