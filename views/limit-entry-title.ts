import type { LimitEntry } from '../src/domain/limit-entry.ts'
import { tradeWord } from './words/en/trade.ts'
import { words } from './words/en.ts'

/** What the fold of a limit is called: what is limited, what for, and as it is written. */
export function limitEntryTitle(entry: LimitEntry): string {
  const { limitForms, trade } = words
  if (entry.characteristic === '') return limitForms.another
  return [
    tradeWord(trade.characteristic, entry.characteristic),
    tradeWord(trade.faceMaterial, entry.faceMaterial),
    tradeWord(trade.service, entry.service),
    sizesOf(entry),
    entry.asWritten,
  ]
    .filter((part) => part !== '')
    .join(' · ')
}

function sizesOf({ diameterOverMm: over, diameterUpToMm: upTo }: LimitEntry): string {
  if (over === '' && upTo === '') return ''
  return words.limitForms.sizes(over, upTo)
}
