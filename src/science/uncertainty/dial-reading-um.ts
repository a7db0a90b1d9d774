import { requireRange } from '../check/require-range.ts'
import { meanReading } from '../statistics/mean-reading.ts'
import type { DialReadingInput } from './dial-reading-budget.ts'

/**
 * Gives the figure of one or more repeats read with an indicator, in um.
 *
 * mean x cos leverAngle
 *
 * @param input readingsUm: from 1 to 10 000 finite numbers; leverAngleDeg: between lever and
 *   surface, from 0 to 60 (0 when absent)
 * @returns um
 * @throws RangeError outside these ranges
 * Validity: of a lever that was set at that angle; a dial indicator has none.
 * Source: a lever turns by the movement over its length x cos leverAngle: geometry.
 * @example dialReadingUm({ readingsUm: [40, 42], leverAngleDeg: 15 }) // 39.60
 */
export function dialReadingUm(
  input: Pick<DialReadingInput, 'readingsUm' | 'leverAngleDeg'>,
): number {
  const { readingsUm, leverAngleDeg = 0 } = input
  requireRange('dialReadingUm', 'leverAngleDeg', leverAngleDeg, { from: 0, to: 60 })
  return meanReading(readingsUm).mean * Math.cos((leverAngleDeg * Math.PI) / 180)
}
