import type { ShownResult } from '../../src/domain/shown-result.ts'
import { tradeWord } from '../words/en/trade.ts'
import { words } from '../words/en.ts'

/** What a result was measured on, in words; null for the machine or the seal as a whole. */
export function placeText(on: ShownResult['on']): string | null {
  if (on === null) return null
  const { componentKind, section } = words.trade
  return on in section ? tradeWord(section, on) : tradeWord(componentKind, on)
}
