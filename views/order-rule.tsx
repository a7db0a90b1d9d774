import type { FC } from 'hono/jsx'
import type { Evidence } from '../src/domain/evidence.ts'
import type { Fault } from '../src/domain/fault.ts'
import { isMeasured } from '../src/domain/is-measured.ts'
import type { OrderActs } from '../src/domain/order-acts.ts'
import { AgreedRuleForm } from './agreed-rule-form.tsx'
import { AgreedRuleText } from './agreed-rule-text.tsx'
import { words } from './words/en.ts'

/** What was typed into the form of a rule and refused. */
export type RuleTyped = {
  readonly values: Readonly<Record<string, string>>
  readonly faults: readonly Fault[]
}

/** What the order's results are compared by; another can be agreed while nothing is measured. */
export const OrderRule: FC<{
  evidence: Evidence
  acts: OrderActs
  formKey: string
  typed: RuleTyped
}> = ({ evidence, acts, formKey, typed }) => {
  const w = words.agreedRules
  return (
    <section class="card stack" aria-labelledby="rule-title">
      <h2 id="rule-title">{w.title}</h2>
      <AgreedRuleText
        rule={evidence.agreedRule}
        shareAtMost={evidence.limitSet.uncertaintyShareAtMost}
      />
      {acts.canAgreeRule && !isMeasured(evidence) ? (
        <AgreedRuleForm
          action={`/work-orders/${evidence.workOrder.number}/rule`}
          summary={w.agreeForOrder}
          note={w.untilMeasured}
          form={{ typed: typed.values, faults: typed.faults, formKey: `${formKey}-rule` }}
        />
      ) : null}
    </section>
  )
}
