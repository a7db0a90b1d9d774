import type { SixteenPercentRule } from '../../../src/science/acceptance/sixteen-percent-rule.ts'
import { finishWords } from './finish.ts'

/** What the 16 % rule says of so many traces: `kept, none above the limit`. */
export function sixteenPercentText(rule: SixteenPercentRule, count: number): string {
  const { rule: w } = finishWords
  const said = rule.kind === 'more' ? w.more(rule.untilCount) : w[rule.kind]
  return `${said}, ${w.above(rule.beyondCount, count)}`
}
