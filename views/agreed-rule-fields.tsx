import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import { decisionRules } from '../src/science/acceptance/decision-rule.ts'
import { ChoiceCards } from './components/choice-cards.tsx'
import { Field } from './components/field.tsx'
import { errorOf } from './error-of.ts'
import { decisionWords } from './words/en/decision.ts'
import { words } from './words/en.ts'

const w = words.agreedRules

/** What the fields are called in the summary above a form. */
export const agreedRuleLabels: Readonly<Record<string, string>> = {
  decisionRule: w.legend,
  decisionProbability: w.probability,
  ruleReference: w.reference,
}

/** The rules to choose from, each with what it means and its risk. */
export const AgreedRuleFields: FC<{
  typed: Readonly<Record<string, string>>
  faults: readonly Fault[]
}> = ({ typed, faults }) => (
  <>
    <div class="choices-rows">
      <ChoiceCards
        name="decisionRule"
        legend={w.legend}
        value={typed.decisionRule}
        choices={decisionRules.map((rule) => ({
          value: rule,
          label: decisionWords.rule[rule],
          detail: decisionWords.ruleSentence[rule],
        }))}
        {...errorOf(faults, 'decisionRule')}
      />
    </div>
    <Field
      name="decisionProbability"
      label={w.probability}
      hint={w.probabilityHint}
      value={typed.decisionProbability}
      inputMode="decimal"
      width="number"
      {...errorOf(faults, 'decisionProbability')}
    />
    <Field
      name="ruleReference"
      label={w.reference}
      hint={w.referenceHint}
      value={typed.ruleReference}
      {...errorOf(faults, 'ruleReference')}
    />
  </>
)
