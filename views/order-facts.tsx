import type { FC } from 'hono/jsx'
import type { Evidence } from '../src/domain/evidence.ts'
import type { Component } from '../src/domain/seal.ts'
import { sealSection } from '../src/plots/seal-section.ts'
import { Facts } from './components/facts.tsx'
import { SvgDrawing } from './components/svg-drawing.tsx'
import { numberText } from './figures/number-text.ts'
import { dayText } from './figures/time-text.ts'
import { tradeWord } from './words/en/trade.ts'
import { words } from './words/en.ts'

/** The seal with its drawn section and what it is made of. */
export const SealFacts: FC<{ evidence: Evidence }> = ({ evidence }) => {
  const { seal, equipment } = evidence
  const { trade, workOrders: w } = words
  const drawing =
    seal.drawingRevision === '' ? seal.drawing : w.revision(seal.drawing, seal.drawingRevision)
  return (
    <section class="card stack" aria-labelledby="seal-title">
      <h2 id="seal-title">{w.sealTitle}</h2>
      <SvgDrawing drawing={sealSection({ widthPx: 300 })} id="section" title={w.sealDrawing} />
      <Facts
        layout="rows"
        pairs={[
          { label: w.fact.serial, value: <a href={`/seals/${seal.id}`}>{seal.serial}</a> },
          { label: w.fact.drawing, value: stated(drawing) },
          { label: w.fact.size, value: stated(seal.size) },
          { label: w.fact.shaft, value: `${numberText(seal.shaftDiameterMm)} ${trade.unit.mm}` },
          { label: w.fact.position, value: equipment?.tag ?? w.noPosition },
          { label: w.fact.fluid, value: stated(equipment?.serviceFluid ?? '') },
          ...seal.components.map((one) => ({
            label: trade.componentKind[one.kind],
            value: componentText(one),
          })),
        ]}
      />
    </section>
  )
}

/** What was stated at receipt. */
export const OrderFacts: FC<{ evidence: Evidence }> = ({ evidence }) => {
  const { workOrder: order, limitSet } = evidence
  const { trade, workOrders: w } = words
  const { unit } = trade
  return (
    <section class="card stack" aria-labelledby="order-title">
      <h2 id="order-title">{w.orderTitle}</h2>
      <Facts
        layout="rows"
        pairs={[
          { label: w.fact.received, value: dayText(order.receivedAt) },
          { label: w.fact.due, value: stated(order.dueOn ?? '') },
          { label: w.fact.customerOrder, value: stated(order.customerOrder) },
          { label: w.fact.reason, value: stated(order.reasonForRemoval) },
          { label: w.fact.decontamination, value: trade.decontamination[order.decontamination] },
          { label: w.fact.lastFluid, value: stated(order.lastFluid) },
          { label: w.fact.service, value: trade.service[order.service] },
          { label: w.fact.pressure, value: measured(order.sealedPressureKPa, unit.kPa) },
          { label: w.fact.temperature, value: measured(order.serviceTemperatureC, unit.c) },
          { label: w.fact.speed, value: measured(order.shaftSpeedPerMin, unit.perMin) },
          {
            label: w.fact.limitSet,
            value: (
              <span>
                <a class="link-line" href={`/limit-sets/${limitSet.id}`}>
                  {w.limitSet(limitSet.name, limitSet.version)}
                </a>
                <a class="link-line" href={`/work-orders/${order.number}/limits`}>
                  {words.limitReasons.link}
                </a>
              </span>
            ),
          },
        ]}
      />
    </section>
  )
}

function componentText(one: Component): string {
  const w = words.workOrders
  const { outerDiameterMm: outer, innerDiameterMm: inner, noseHeightMm: nose } = one
  const least = one.minimumNoseHeightMm
  return [
    tradeWord(words.trade.faceMaterial, stated(one.material)),
    outer === null || inner === null ? '' : w.diameters(numberText(outer), numberText(inner)),
    nose === null || least !== null ? '' : w.nose(numberText(nose)),
    nose === null || least === null ? '' : w.noseWithLeast(numberText(nose), numberText(least)),
  ]
    .filter((part) => part !== '')
    .join(', ')
}

function stated(text: string): string {
  return text === '' ? words.chrome.notStated : text
}

function measured(value: number | null, unit: string): string {
  return value === null ? words.chrome.notStated : `${numberText(value)} ${unit}`
}
