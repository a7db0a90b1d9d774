import type { FC } from 'hono/jsx'
import type { LimitExplanation } from '../src/domain/explain-limit.ts'
import type { ExplainedPart } from '../src/domain/explain-order-limits.ts'
import type { AppliedLimit } from '../src/domain/limit-for.ts'
import type { LimitSet } from '../src/domain/limit-set.ts'
import { Facts } from './components/facts.tsx'
import { PageHead } from './components/page-head.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { conditionsText, pressureText } from './figures/conditions-text.ts'
import { limitText } from './figures/limit-text.ts'
import { numberText } from './figures/number-text.ts'
import { LimitBasisMark } from './limit-list.tsx'
import { type Frame, Page } from './page.tsx'
import { inSentence } from './words/en/in-sentence.ts'
import { tradeWord } from './words/en/trade.ts'
import { words } from './words/en.ts'

const w = words.limitReasons

/** For each face and for the machine: the limit that applies, and why the others do not. */
export const LimitReasonsPage: FC<{
  frame: Frame
  orderNumber: string
  limitSet: Pick<LimitSet, 'id' | 'name' | 'version'>
  parts: readonly ExplainedPart[]
}> = ({ frame, orderNumber, limitSet, parts }) => (
  <Page frame={frame} title={w.title}>
    <PageHead title={w.title} over={orderNumber} lead={w.lead} />
    <div class="stack-loose">
      <p>
        <a href={`/work-orders/${orderNumber}`}>{orderNumber}</a>
        {' · '}
        <a href={`/limit-sets/${limitSet.id}`}>
          {words.workOrders.limitSet(limitSet.name, limitSet.version)}
        </a>
      </p>
      {parts.map((part) => (
        <Part part={part} />
      ))}
    </div>
  </Page>
)

const Part: FC<{ part: ExplainedPart }> = ({ part }) => {
  const { component, explanations } = part
  const title =
    component === null ? w.ofMachine : w.ofFace(words.trade.componentKind[component.kind])
  const isLimited = (one: LimitExplanation) => one.applied !== undefined || one.others.length > 0
  const unlimited = explanations.filter((one) => !isLimited(one))
  return (
    <section class="card stack">
      <h2>{title}</h2>
      <h3>{w.case}</h3>
      <Facts pairs={casePairs(part)} />
      {component === null ? <p class="soft">{w.boreNote}</p> : null}
      {explanations.filter(isLimited).map((one) => (
        <Explained explanation={one} />
      ))}
      {unlimited.length === 0 ? null : (
        <p class="soft">
          {w.unlimited}{' '}
          {unlimited
            .map((one) => inSentence(words.trade.characteristic[one.characteristic]))
            .join(', ')}
          .
        </p>
      )}
    </section>
  )
}

function casePairs({ component, limitCase }: ExplainedPart) {
  const { caseLabel } = w
  const { faceMaterial, diameterMm, pressureKPa, speedPerMin, service } = limitCase
  const { trade } = words
  const diameter = diameterMm === null ? w.notKnown : `${numberText(diameterMm)} ${trade.unit.mm}`
  return [
    ...(component === null
      ? []
      : [
          {
            label: caseLabel.material,
            value: faceMaterial === null ? w.notKnown : tradeWord(trade.faceMaterial, faceMaterial),
          },
        ]),
    {
      label: component === null ? caseLabel.diameterOfShaft : caseLabel.diameterOfFace,
      value: diameter,
    },
    {
      label: caseLabel.pressure,
      value: pressureKPa === null ? w.notKnown : pressureText(pressureKPa),
    },
    {
      label: caseLabel.speed,
      value: speedPerMin === null ? w.notKnown : w.perMin(numberText(speedPerMin)),
    },
    { label: caseLabel.service, value: service === null ? w.notKnown : trade.service[service] },
  ]
}

const Explained: FC<{ explanation: LimitExplanation }> = ({ explanation }) => {
  const { characteristic, applied, others } = explanation
  return (
    <section class="stack">
      <h3>{words.trade.characteristic[characteristic]}</h3>
      {applied === undefined ? (
        <VerdictMark verdict="missing" word={w.noneApplies} />
      ) : (
        <Applied applied={applied} />
      )}
      {others.length === 0 ? null : (
        <details class="fold">
          <summary>{w.othersOf(others.length)}</summary>
          <ul class="fold-body stack">
            {others.map(({ limit, why }) => (
              <li>
                <span class="number strong">{limitText(limit)}</span>
                {`, ${conditionsText(limit)}: `}
                {why.map((one) => w.reason[one]).join('; ')}.
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  )
}

/** Multiplied out where it is per millimetre of what is known. */
const Applied: FC<{ applied: AppliedLimit }> = ({ applied }) => {
  const { limit, lower, upper, isSizeKnown } = applied
  const { characteristic, perMmOf } = limit
  const isMultiplied = perMmOf !== null && isSizeKnown
  return (
    <div>
      <p class="number strong">
        {isSizeKnown ? limitText({ characteristic, lower, upper }) : limitText(limit)}
      </p>
      {isMultiplied ? <p class="cell-detail">{w.timesSize(limitText(limit))}</p> : null}
      {isSizeKnown ? null : <p class="cell-detail">{w.sizeNotKnown}</p>}
      <p class="cell-detail">{limit.asWritten}</p>
      <p>{w.because(conditionsText(limit))}</p>
      <LimitBasisMark limit={limit} />
    </div>
  )
}
