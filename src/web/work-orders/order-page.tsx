import { type OrderDone, type OrderTyped, WorkOrderPage } from '../../../views/work-order-page.tsx'
import { certifiedLappings } from '../../domain/certified-lapping.ts'
import { certifiedStrip } from '../../domain/certified-strip-records.ts'
import type { Evidence } from '../../domain/evidence.ts'
import { judgedReadings, judgedTests, judgedValues } from '../../domain/judged-evidence.ts'
import { lapRows } from '../../domain/lap-rows.ts'
import { missingForHandOver } from '../../domain/missing-for-hand-over.ts'
import { orderActs } from '../../domain/order-acts.ts'
import { stageSteps } from '../../domain/stage-steps.ts'
import { listCertificates } from '../../store/list-certificates.ts'
import { listFacePhotos } from '../../store/list-face-photos.ts'
import { listUseExceptions } from '../../store/list-use-exceptions.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { newFormKey } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { viewer } from '../viewer.ts'

/** The evidence of the order in the address, or 'not found'. */
export function evidenceOf(c: AppContext): Evidence {
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  return readEvidence(store, order.id)
}

/** The order's page; with `typed` as the answer to a form that was refused. */
export function sendOrder(
  c: AppContext,
  evidence: Evidence,
  page: { readonly done?: OrderDone; readonly typed?: Partial<OrderTyped>; formKey?: string } = {},
): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const { workOrder } = evidence
  const typed = { ...nothingTyped(evidence), ...page.typed }
  const numbers = listCertificates(store, { workOrderId: workOrder.id }).map((one) => one.number)
  const markup = (
    <WorkOrderPage
      frame={frameOf(c)}
      evidence={evidence}
      steps={stageSteps(workOrder.stage, evidence.stageChanges)}
      readings={judgedReadings(evidence)}
      tests={judgedTests(evidence)}
      values={judgedValues(evidence)}
      laps={lapRows(evidence)}
      lapping={certifiedLappings(evidence)}
      stripRecords={certifiedStrip(evidence)}
      exceptions={listUseExceptions(store, workOrder.id)}
      photos={listFacePhotos(store, workOrder.id)}
      missing={missingForHandOver(evidence)}
      acts={orderActs(workOrder, viewer(c).role)}
      certificateNumbers={[...new Set(numbers)]}
      formKey={page.formKey ?? newFormKey(randomBytes)}
      done={page.done ?? null}
      typed={typed}
    />
  )
  return sendPage(c, markup, page.typed === undefined ? 200 : 422)
}

function nothingTyped({ workOrder }: Evidence): OrderTyped {
  const { decontamination: state, lastFluid } = workOrder
  return {
    isHandOverRefused: false,
    note: '',
    noteFaults: [],
    withdrawal: { reason: '', faults: [] },
    rule: { values: {}, faults: [] },
    decontamination: { state: state === 'not-stated' ? '' : state, lastFluid, faults: [] },
  }
}
