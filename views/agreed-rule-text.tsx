import type { FC } from 'hono/jsx'
import type { AgreedRule } from '../src/domain/agreed-rule.ts'
import { percentText } from './figures/percent-text.ts'
import { dayText } from './figures/time-text.ts'
import { ruleName } from './words/en/agreed-rules.ts'
import { decisionWords } from './words/en/decision.ts'
import { words } from './words/en.ts'

const w = words.agreedRules

/**
 * A rule by its name, what it means with its risk, when it decides nothing, and where it comes
 * from. Without the share of an order's limit set it speaks of whichever set there will be.
 */
export const AgreedRuleText: FC<{ rule: AgreedRule; shareAtMost?: number }> = ({
  rule,
  shareAtMost,
}) => (
  <div>
    <p class="strong">{ruleName(rule)}</p>
    <p>{decisionWords.ruleSentence[rule.rule]}</p>
    <p class="small">
      {shareAtMost === undefined
        ? decisionWords.tooLargeInSet
        : decisionWords.tooLarge(percentText(shareAtMost))}{' '}
      {decisionWords.unknown[rule.rule]}
    </p>
    <p class="soft">{whenceText(rule)}</p>
  </div>
)

function whenceText({ scope, reference, byName, at }: AgreedRule): string {
  if (scope === 'house') return w.scope.house
  return w.agreed(w.scope[scope], reference, byName, dayText(at))
}
