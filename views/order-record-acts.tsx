import type { FC } from 'hono/jsx'
import type { Evidence } from '../src/domain/evidence.ts'
import type { Missing } from '../src/domain/missing-for-hand-over.ts'
import type { OrderActs } from '../src/domain/order-acts.ts'
import { faceKinds } from '../src/domain/seal.ts'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { stripActs } from './strip/strip-acts.ts'
import { words } from './words/en.ts'

type Acts = { readonly evidence: Evidence; readonly missing: readonly Missing[] }

/** The missing acts in large; what is recorded already can be done again. */
export const RecordActs: FC<Acts & { readonly acts: OrderActs }> = ({
  evidence,
  missing,
  acts,
}) => {
  const base = `/work-orders/${evidence.workOrder.number}`
  return (
    <ButtonRow>
      {acts.canRecordOpened ? <OpenedActs evidence={evidence} missing={missing} /> : null}
      <ButtonLink href={`${base}/run-out-surveys/new`} label={words.surveys.act} size="large" />
      <ButtonLink
        href={`${base}/measured-values/new`}
        label={words.measuredValues.act.dial}
        size="large"
      />
    </ButtonRow>
  )
}

const faceActs = [
  ['roughness', '?characteristic=roughness'],
  ['height', '?characteristic=face-height'],
] as const

/** What is done upon a seal that is open: everything but what is read at the machine. */
const OpenedActs: FC<Acts> = ({ evidence, missing }) => {
  const w = words.workOrders
  const { number } = evidence.workOrder
  const isTestMissing = missing.some((one) => one.kind === 'static-test')
  const faces = faceKinds.flatMap((kind) => {
    return evidence.seal.components.filter((one) => one.kind === kind)
  })
  return (
    <>
      {faces.map((face) => (
        <ButtonLink
          href={`/work-orders/${number}/flatness/new?face=${face.id}`}
          label={w.readFace(words.trade.componentKind[face.kind])}
          kind={missing.some((one) => one.faceKind === face.kind) ? 'main' : 'plain'}
          size="large"
        />
      ))}
      <ButtonLink
        href={`/work-orders/${number}/face-photos/new`}
        label={words.facePhoto.orderLink}
        size="large"
      />
      <ButtonLink
        href={`/work-orders/${number}/static-tests/new`}
        label={w.test}
        kind={isTestMissing ? 'main' : 'plain'}
        size="large"
      />
      <ButtonLink
        href={`/work-orders/${number}/lap-cycles/new`}
        label={words.lapping.act}
        size="large"
      />
      <ButtonLink
        href={`/work-orders/${number}/strip`}
        label={words.findings.stripAct}
        kind={evidence.workOrder.stage === 'received' ? 'main' : 'plain'}
        size="large"
      />
      {stripActs.map(([place, label]) => (
        <ButtonLink href={`/work-orders/${number}/${place}/new`} label={label} size="large" />
      ))}
      {faceActs.map(([family, query]) => (
        <ButtonLink
          href={`/work-orders/${number}/measured-values/new${query}`}
          label={words.measuredValues.act[family]}
          size="large"
        />
      ))}
    </>
  )
}
