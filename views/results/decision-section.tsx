import type { FC } from 'hono/jsx'
import type { AgreedRule } from '../../src/domain/agreed-rule.ts'
import type { Judged } from '../../src/domain/judged.ts'
import type { ShownResult } from '../../src/domain/shown-result.ts'
import type { Uncertainty } from '../../src/domain/uncertainty.ts'
import type { ConformityDecision } from '../../src/science/acceptance/decide-conformity.ts'
import { AgreedRuleText } from '../agreed-rule-text.tsx'
import { Facts } from '../components/facts.tsx'
import { percentText } from '../figures/percent-text.ts'
import { improveText } from '../improve-text.ts'
import { incompleteText } from '../incomplete-text.ts'
import { JudgedLimit } from '../judged-limit.tsx'
import { JudgedPicture } from '../judged-picture.tsx'
import { words } from '../words/en.ts'

/** What the result was held against, by which rule, and how sure the verdict is. */
export const DecisionSection: FC<{
  result: ShownResult
  agreedRule: AgreedRule
  shareAtMost: number
}> = ({ result, agreedRule, shareAtMost }) => {
  const { judged, uncertainty } = result
  const w = words.results
  return (
    <section class="stack" aria-labelledby="decision-title">
      <div class="section-head">
        <h2 id="decision-title">{w.decisionTitle}</h2>
      </div>
      <JudgedPicture judged={judged} uncertainty={uncertainty} />
      <JudgedLimit judged={judged} />
      <AgreedRuleText rule={agreedRule} shareAtMost={shareAtMost} />
      {judged.decision === null ? (
        <p class="soft">{notCompared(judged, uncertainty)}</p>
      ) : (
        <Facts layout="rows" pairs={riskPairs(judged.decision)} />
      )}
    </section>
  )
}

/** Why no probability is stated; where a part of the budget is missing, which one. */
function notCompared(judged: Judged, uncertainty: Uncertainty | null): string {
  if (judged.why === 'incomplete-budget') return improveText(judged) ?? words.results.notCompared
  return incompleteText(judged, uncertainty) ?? words.results.notCompared
}

function riskPairs(decision: ConformityDecision) {
  const w = words.results
  return [
    { label: w.conformance, value: percentText(decision.conformanceProbability) },
    { label: w.falseAccept, value: percentText(decision.falseAcceptRisk) },
    { label: w.falseReject, value: percentText(decision.falseRejectRisk) },
    ...(decision.uncertaintyShare === null
      ? []
      : [{ label: w.share, value: percentText(decision.uncertaintyShare) }]),
  ]
}
