import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'

/** Repeat turns brought together. */
export interface MeanOfTurns {
  /** At each position the mean of the turns, each turn about its own mean. */
  readonly valuesUm: readonly number[]
  /** Scatter of one reading between turns; null for one turn. */
  readonly standardDeviationUm: number | null
  readonly degreesOfFreedom: number | null
}

/**
 * Gives the mean of repeat turns at the same positions, and how well they repeat.
 *
 * each turn less its mean; s^2 = sum of (reading - mean of the position)^2 / ((T - 1) (N - 1))
 *
 * @param turns T of one or more, each with the same count N of readings, two or more, in one order
 * @returns um
 * @throws RangeError on unequal turns
 * Validity: a turn may be zeroed anew: its mean is taken out. Scatter of what all turns have in
 *   common, such as a bracket that always droops, stays hidden.
 * Source: two-way analysis of variance without interaction; JCGM 100:2008, 4.2.2 for one reading.
 * @example meanOfTurns([[0, 10, 20], [2, 11, 20]]).standardDeviationUm // 0.7071
 */
export function meanOfTurns(turns: readonly (readonly number[])[]): MeanOfTurns {
  const name = 'meanOfTurns'
  requireWhole(name, 'count of turns', turns.length, { from: 1, to: 1000 })
  const count = turns[0]?.length ?? 0
  requireWhole(name, 'count of readings', count, { from: 2, to: 100_000 })
  const centred = turns.map((turn) => {
    requireWhole(name, 'count of readings in each turn', turn.length, { from: count, to: count })
    const mean = turn.reduce((sum, one) => sum + requireFinite(name, 'reading', one), 0) / count
    return turn.map((one) => one - mean)
  })
  const valuesUm = Array.from({ length: count }, (_, i) => {
    return centred.reduce((sum, turn) => sum + (turn[i] as number), 0) / turns.length
  })
  if (turns.length === 1) return { valuesUm, standardDeviationUm: null, degreesOfFreedom: null }
  const squares = centred.flatMap((turn) => turn.map((one, i) => (one - (valuesUm[i] ?? 0)) ** 2))
  const degreesOfFreedom = (turns.length - 1) * (count - 1)
  const variance = squares.reduce((sum, one) => sum + one, 0) / degreesOfFreedom
  return { valuesUm, standardDeviationUm: Math.sqrt(variance), degreesOfFreedom }
}
