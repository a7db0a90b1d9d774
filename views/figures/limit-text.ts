import type { Limit } from '../../src/domain/limit-set.ts'
import { limitInUnitText } from './limit-in-unit-text.ts'
import { resultText, secondResultText } from './result-text.ts'

/**
 * A limit as pages show it: `≤ 0.881 µm (34.7 µin)`; a lower one with ≥, both where it has both. One
 * per millimetre, where it is not multiplied out: `≤ 0.500 µm per mm of chamber bore`.
 * @example limitText({ characteristic: 'flatness', lower: null, upper: 0.8814 })
 *   // ≤ 0.881 µm (34.7 µin)
 */
export function limitText(
  limit: Pick<Limit, 'characteristic' | 'lower' | 'upper'> & Partial<Pick<Limit, 'perMmOf'>>,
): string {
  const { characteristic, lower, upper, perMmOf = null } = limit
  if (perMmOf !== null) return limitInUnitText({ lower, upper, perMmOf }, 'um-per-mm')
  const sides = [
    ...(lower === null ? [] : [side(characteristic, '≥', lower)]),
    ...(upper === null ? [] : [side(characteristic, '≤', upper)]),
  ]
  return sides.join(', ')
}

function side(characteristic: Limit['characteristic'], sign: string, bound: number): string {
  const { value, unit } = resultText(characteristic, bound)
  const second = secondResultText(characteristic, bound)
  const inBrackets = second === undefined ? '' : ` (${second.value} ${second.unit})`
  return `${sign} ${value} ${unit}${inBrackets}`
}
