import type { FC } from 'hono/jsx'
import type { Seal } from '../src/domain/seal.ts'
import type { WorkOrder } from '../src/domain/work-order.ts'
import { EmptyState } from './components/empty-state.tsx'
import { PageHead } from './components/page-head.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { type Frame, Page } from './page.tsx'
import { sealLine } from './seal-line.ts'
import { stageMark } from './stage-mark.ts'
import { words } from './words/en.ts'

const w = words.mySeals

export type MySeal = {
  readonly seal: Seal
  readonly equipmentTag: string | null
  /** The newest one; null where the seal never came. */
  readonly order: WorkOrder | null
  /** Numbers of all certificates of the seal, newest first. */
  readonly certificates: readonly string[]
  readonly isAtWork: boolean
}

/** A customer's seals: where each one stands, and its certificates. For a phone first. */
export const MySealsPage: FC<{ frame: Frame; seals: readonly MySeal[] }> = ({ frame, seals }) => (
  <Page frame={frame} title={w.title}>
    <PageHead title={w.title} lead={w.lead} />
    {seals.length === 0 ? (
      <EmptyState title={w.none} text={w.noneText} />
    ) : (
      <div class="stack-loose">
        <Group title={w.atWork} seals={seals.filter((one) => one.isAtWork)} />
        <Group title={w.done} seals={seals.filter((one) => !one.isAtWork)} />
      </div>
    )}
  </Page>
)

const Group: FC<{ title: string; seals: readonly MySeal[] }> = ({ title, seals }) =>
  seals.length === 0 ? null : (
    <section>
      <div class="section-head">
        <h2>{title}</h2>
      </div>
      <ul class="columns">
        {seals.map((one) => (
          <li class="card stack-tight">{card(one)}</li>
        ))}
      </ul>
    </section>
  )

function card({ seal, equipmentTag, order, certificates }: MySeal) {
  return (
    <>
      <h3>
        <a href={`/seals/${seal.id}`}>{words.mySeals.sealTitle(seal.serial)}</a>
      </h3>
      <p class="soft">{sealLine(seal, equipmentTag)}</p>
      {order === null ? (
        <p>{w.noOrder}</p>
      ) : (
        <>
          <p>
            <VerdictMark verdict={stageMark(order.stage)} word={words.trade.stage[order.stage]} />
          </p>
          <p>{w.stage[order.stage]}</p>
          <p class="soft">{[order.number, ...dueText(order)].join(' · ')}</p>
        </>
      )}
      {certificates.map((number) => (
        <p>
          {w.certificate} <a href={`/certificates/${number}`}>{number}</a>
        </p>
      ))}
    </>
  )
}

function dueText({ stage, dueOn }: WorkOrder): string[] {
  const isOver = stage === 'released' || stage === 'dispatched' || stage === 'withdrawn'
  return isOver || dueOn === null ? [] : [w.due(dueOn)]
}
