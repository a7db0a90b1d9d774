import type { Limit } from '../../src/domain/limit-set.ts'
import { resultText, secondResultText } from './result-text.ts'

/**
 * A limit as pages show it: `≤ 0.881 µm (34.7 µin)`.
 * @example limitText({ characteristic: 'flatness', upper: 0.8814 }) // ≤ 0.881 µm (34.7 µin)
 */
export function limitText(limit: Pick<Limit, 'characteristic' | 'upper'>): string {
  const { value, unit } = resultText(limit.characteristic, limit.upper)
  const second = secondResultText(limit.characteristic, limit.upper)
  const inBrackets = second === undefined ? '' : ` (${second.value} ${second.unit})`
  return `≤ ${value} ${unit}${inBrackets}`
}
