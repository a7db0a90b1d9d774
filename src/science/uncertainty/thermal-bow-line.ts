import { requireRange } from '../check/require-range.ts'
import type { BudgetLine } from './budget-line.ts'
import { rectangularLine } from './rectangular-line.ts'

/** A temperature difference through a ring or flat and what it does to it. */
export interface ThermalBow {
  readonly deltaK: number
  readonly expansionPerK: number
  readonly diameterMm: number
  readonly thicknessMm: number
}

/**
 * Gives the line of a part that bows because one of its sides may be warmer, contribution in um.
 *
 * value = |deltaK| / sqrt 3, sensitivity = expansionPerK x diameterMm^2 / (8 x thicknessMm) x 1000
 *
 * @param source id of the line
 * @param bow deltaK: largest difference through the thickness, from -1000 to 1000, its sign of no
 *   matter; expansionPerK: from -1e-3 to 1e-3; diameterMm, thicknessMm: from 0.1 to 10000
 * @returns the line, value in K, rectangular
 * @throws RangeError outside these ranges
 * Validity: a free plate, the difference even over its area.
 * Source: own derivation: a plate of thickness t bends to the radius t / (expansionPerK x deltaK).
 * @example thermalBowLine('thermal-bow', { deltaK: 1, expansionPerK: 4e-6, diameterMm: 60,
 *   thicknessMm: 10 }).sensitivity // 0.18
 */
export function thermalBowLine(source: string, bow: ThermalBow): BudgetLine {
  const { deltaK, expansionPerK, diameterMm, thicknessMm } = bow
  const name = 'thermalBowLine'
  requireRange(name, 'deltaK', deltaK, { from: -1000, to: 1000 })
  requireRange(name, 'expansionPerK', expansionPerK, { from: -1e-3, to: 1e-3 })
  requireRange(name, 'diameterMm', diameterMm, { from: 0.1, to: 10_000 })
  requireRange(name, 'thicknessMm', thicknessMm, { from: 0.1, to: 10_000 })
  const sensitivity = ((expansionPerK * diameterMm * diameterMm) / (8 * thicknessMm)) * 1000
  return rectangularLine({ source, halfWidth: Math.abs(deltaK), sensitivity })
}
