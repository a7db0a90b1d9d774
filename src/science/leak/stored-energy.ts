import { requireRange } from '../check/require-range.ts'

/** What gas under pressure lets go when its vessel opens at once. */
export interface StoredEnergy {
  readonly energyJ: number
  /** The mass of TNT of the same energy. */
  readonly tntKg: number
}

/** Energy of a kilogram of TNT, as pressure testing codes count it. */
const tntJPerKg = 4_266_920

/**
 * Gives the energy of gas in a closed volume that expands, without exchange of heat, to the ambient
 * pressure.
 *
 * E = p V / (gamma - 1) (1 - (ambient / p)^((gamma - 1) / gamma)); TNT = E / 4 266 920 J/kg
 *
 * @param input pressureKPaAbs: from 0 to 1e6; volumeL: from 0 to 1e9; gamma, the ratio of the specific
 *   heats: from 1.001 to 2, 1.4 when absent (air, nitrogen); ambientKPaAbs: from 0.001 to 1e4, 101.325
 *   when absent
 * @returns J and kg, 0 where the pressure is not above the ambient one
 * @throws RangeError outside these ranges
 * Validity: an ideal gas, all of it gas: a liquid that flashes lets go far more. What pieces and
 *   blast do is no matter of this figure: distances come from the site's rules.
 * Source: ASME PCC-2, 501-II and III, after a piping page that cites them.
 * @example storedEnergy({ pressureKPaAbs: 271.325, volumeL: 28 }).energyJ // 4659
 */
export function storedEnergy(input: {
  readonly pressureKPaAbs: number
  readonly volumeL: number
  readonly gamma?: number | undefined
  readonly ambientKPaAbs?: number | undefined
}): StoredEnergy {
  const { pressureKPaAbs, volumeL, gamma = 1.4, ambientKPaAbs = 101.325 } = input
  const name = 'storedEnergy'
  requireRange(name, 'pressureKPaAbs', pressureKPaAbs, { from: 0, to: 1e6 })
  requireRange(name, 'volumeL', volumeL, { from: 0, to: 1e9 })
  requireRange(name, 'gamma', gamma, { from: 1.001, to: 2 })
  requireRange(name, 'ambientKPaAbs', ambientKPaAbs, { from: 0.001, to: 1e4 })
  if (pressureKPaAbs <= ambientKPaAbs) return { energyJ: 0, tntKg: 0 }
  // kPa times L are J. 1 - x^a as expm1 keeps the digits of a small overpressure.
  const share = -Math.expm1(((gamma - 1) / gamma) * Math.log(ambientKPaAbs / pressureKPaAbs))
  const energyJ = ((pressureKPaAbs * volumeL) / (gamma - 1)) * share
  return { energyJ, tntKg: energyJ / tntJPerKg }
}
