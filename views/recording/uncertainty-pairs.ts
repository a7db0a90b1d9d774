import { largestLine } from '../../src/domain/largest-line.ts'
import { coverageFactorText } from '../../src/domain/uncertain-figure.ts'
import type { Uncertainty } from '../../src/domain/uncertainty.ts'
import { sourceWord } from '../words/en/uncertainty-sources.ts'
import { words } from '../words/en.ts'

/** What stands behind ±, for the facts below an answer: factor, largest part, what is left out. */
export function uncertaintyPairs(uncertainty: Uncertainty | null) {
  const w = words.recording.uncertainty
  if (uncertainty === null) return [{ label: w.label, value: w.unknown }]
  const largest = largestLine(uncertainty)
  const { leftOut, coverageFactor } = uncertainty
  return [
    { label: w.label, value: w.factor(coverageFactorText(coverageFactor)) },
    ...(largest === null ? [] : [{ label: w.largest, value: sourceWord(largest.line.source) }]),
    ...(leftOut.length === 0
      ? []
      : [{ label: w.leftOut, value: leftOut.map(sourceWord).join('; ') }]),
  ]
}
