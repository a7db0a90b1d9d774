import type { Seal } from '../src/domain/seal.ts'
import { numberText } from './figures/number-text.ts'
import { words } from './words/en.ts'

/** A seal in one line: position, arrangement, shaft. */
export function sealLine(seal: Seal, equipmentTag: string | null): string {
  const arrangement = words.trade.arrangement[seal.arrangement].toLowerCase()
  const shaft = `${numberText(seal.shaftDiameterMm)} ${words.trade.unit.mm}`
  return [equipmentTag, arrangement, shaft].filter((one) => one !== null).join(' · ')
}
