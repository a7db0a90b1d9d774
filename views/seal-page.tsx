import type { FC } from 'hono/jsx'
import type { Certificate } from '../src/domain/certificate.ts'
import type { Equipment } from '../src/domain/equipment.ts'
import type { Seal } from '../src/domain/seal.ts'
import type { WorkOrder } from '../src/domain/work-order.ts'
import { sealSection } from '../src/plots/seal-section.ts'
import { EmptyState } from './components/empty-state.tsx'
import { Facts } from './components/facts.tsx'
import { PageHead } from './components/page-head.tsx'
import { SvgDrawing } from './components/svg-drawing.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { numberText } from './figures/number-text.ts'
import { dayText } from './figures/time-text.ts'
import { type Frame, Page } from './page.tsx'
import { sealLine } from './seal-line.ts'
import { SealResults, type SealResultsProps } from './seal-results.tsx'
import { stageMark } from './stage-mark.ts'
import { tradeWord } from './words/en/trade.ts'
import { words } from './words/en.ts'

const w = words.mySeals
const { trade } = words

/** One order in a seal's life. `results` is null where the viewer is not shown them yet. */
export type SealOrder = {
  readonly order: WorkOrder
  readonly results: SealResultsProps | null
  readonly certificates: readonly Certificate[]
}

/** The life of a seal: what it is, and every order with its results and certificates. */
export const SealPage: FC<{
  frame: Frame
  seal: Seal
  customerName: string
  equipment: Equipment | null
  orders: readonly SealOrder[]
  isStaff: boolean
}> = ({ frame, seal, customerName, equipment, orders, isStaff }) => (
  <Page frame={frame} title={w.sealTitle(seal.serial)}>
    <PageHead
      over={customerName}
      title={w.sealTitle(seal.serial)}
      lead={sealLine(seal, equipment?.tag ?? null)}
    />
    <div class="split">
      <div class="stack">
        <h2>{w.orders}</h2>
        {orders.length === 0 ? <EmptyState title={w.noOrders} /> : null}
        {orders.map((one) => (
          <OrderCard {...one} isStaff={isStaff} />
        ))}
      </div>
      <SealCard seal={seal} equipment={equipment} />
    </div>
  </Page>
)

const OrderCard: FC<SealOrder & { isStaff: boolean }> = (props) => {
  const { order, results, certificates, isStaff } = props
  return (
    <section class="card stack">
      <div class="section-head">
        <h3>
          {isStaff ? <a href={`/work-orders/${order.number}`}>{order.number}</a> : order.number}
        </h3>
        <VerdictMark verdict={stageMark(order.stage)} word={trade.stage[order.stage]} />
      </div>
      <p class="soft">
        {[
          w.received(dayText(order.receivedAt)),
          ...(order.reasonForRemoval === '' ? [] : [w.reason(order.reasonForRemoval)]),
        ].join(' · ')}
      </p>
      {results === null ? <p>{w.notReleased}</p> : <SealResults {...results} />}
      {certificates.map((one) => (
        <p>
          {w.certificate} <a href={`/certificates/${one.number}`}>{one.number}</a>
        </p>
      ))}
    </section>
  )
}

const SealCard: FC<{ seal: Seal; equipment: Equipment | null }> = ({ seal, equipment }) => {
  const said = (text: string) => (text === '' ? words.chrome.notStated : text)
  return (
    <aside class="card stack">
      <SvgDrawing drawing={sealSection({ widthPx: 270 })} />
      <Facts
        layout="rows"
        pairs={[
          { label: w.facts.equipment, value: said(positionText(equipment)) },
          { label: w.facts.arrangement, value: trade.arrangement[seal.arrangement] },
          { label: w.facts.shaft, value: `${numberText(seal.shaftDiameterMm)} ${trade.unit.mm}` },
          { label: w.facts.drawing, value: said(`${seal.drawing} ${seal.drawingRevision}`.trim()) },
          { label: w.facts.size, value: said(seal.size) },
          ...seal.components.map((one) => ({
            label: trade.componentKind[one.kind],
            value: said(tradeWord(trade.faceMaterial, one.material)),
          })),
        ]}
      />
    </aside>
  )
}

function positionText(equipment: Equipment | null): string {
  if (equipment === null) return ''
  return [equipment.tag, equipment.description].filter((one) => one !== '').join(', ')
}
