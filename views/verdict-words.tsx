import type { FC } from 'hono/jsx'
import type { Judged } from '../src/domain/judged.ts'
import type { ShownResult } from '../src/domain/shown-result.ts'
import type { Uncertainty } from '../src/domain/uncertainty.ts'
import { probabilityText } from './figures/probability-text.ts'
import { improveText } from './improve-text.ts'
import { incompleteText } from './incomplete-text.ts'
import { words } from './words/en.ts'

const w = words.inspection

/** Why the verdict is what it is, and how sure it is: probability of conformity, both risks. */
export const VerdictWords: FC<{ judged: Judged; uncertainty: Uncertainty | null }> = (props) => {
  const { judged, uncertainty } = props
  const { decision, why } = judged
  const incomplete = incompleteText(judged, uncertainty)
  const isClear = why === 'within-limit' || why === 'beyond-limit'
  return (
    <>
      {isClear ? null : <p>{words.trade.why[why]}</p>}
      {incomplete === null ? null : <p>{incomplete}</p>}
      {decision === null ? null : (
        <p class="cell-detail">
          {w.conformance(probabilityText(decision.conformanceProbability))}{' '}
          {w.risks(riskText(decision.falseAcceptRisk), riskText(decision.falseRejectRisk))}
        </p>
      )}
    </>
  )
}

function riskText(risk: number): string {
  return risk === 0 ? w.noRisk : probabilityText(risk)
}

/** What would have to improve, and where it is seen. */
export const CannotDecide: FC<{ judged: Judged; shown: ShownResult; number: string }> = (props) => {
  const { judged, shown, number } = props
  const order = `/work-orders/${number}`
  const improve = improveText(judged)
  return (
    <>
      {improve === null ? null : <p>{improve}</p>}
      <p>
        <a href={`${order}/results/${shown.kind}/${shown.id}`}>{w.toBudget}</a>
        {' · '}
        <a href={`${order}/limits`}>{w.toLimits}</a>
      </p>
    </>
  )
}
