import { FindingFormPage } from '../../../views/finding-form-page.tsx'
import type { FindingValues } from '../../../views/findings/form-values.ts'
import { StripMore } from '../../../views/strip/strip-more.tsx'
import { StripPage } from '../../../views/strip-page.tsx'
import { AppError } from '../../domain/app-error.ts'
import { certifiedStrip } from '../../domain/certified-strip-records.ts'
import { currentOnly } from '../../domain/current-only.ts'
import type { Evidence } from '../../domain/evidence.ts'
import { faceHeights } from '../../domain/face-heights.ts'
import type { Fault } from '../../domain/fault.ts'
import type { Finding } from '../../domain/finding.ts'
import { findingFaults } from '../../domain/finding-faults.ts'
import { orderActs } from '../../domain/order-acts.ts'
import { parseFinding } from '../../domain/parse-finding.ts'
import { parsePicture } from '../../domain/parse-picture.ts'
import { maySeeResults } from '../../domain/who-may-see.ts'
import { addFinding } from '../../store/add-finding.ts'
import { readStoredFile } from '../../store/read-stored-file.ts'
import { requireOpenOrder } from '../../store/require-open-order.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'
import { ownFields } from '../own-fields.ts'
import { readUpload } from '../read-upload.ts'
import { newFormKey, recordOnce } from '../record-once.ts'
import { replacedRecord } from '../replaced-record.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { typedText } from '../typed-text.ts'
import { actor, viewer } from '../viewer.ts'
import { openStripDesk } from './desk.ts'
import { findingValuesOf, freshFindingValues, refusedFindingValues } from './form-values.ts'

/** The strip bench of an order. */
export function showStrip(c: AppContext): Promise<Response> {
  const evidence = openStripDesk(c)
  const { canRecord } = orderActs(evidence.workOrder, viewer(c).role)
  const more = (
    <StripMore
      evidence={evidence}
      records={certifiedStrip(evidence)}
      heights={faceHeights(evidence)}
      mayRecord={canRecord && evidence.workOrder.decontamination !== 'not-stated'}
    />
  )
  const page = (
    <StripPage frame={frameOf(c)} evidence={evidence} canRecord={canRecord} more={more} />
  )
  return sendPage(c, page)
}

export function newFinding(c: AppContext): Promise<Response> {
  const desk = openStripDesk(c)
  requireOpenOrder(c.var.shop.store, desk.workOrder.id)
  const replaced = replacedRecord(desk.findings, c.req.query('replaces'))
  return sendFindingForm(c, desk, {
    values:
      replaced === undefined ? freshFindingValues(c.req.query('part')) : findingValuesOf(replaced),
    formKey: newFormKey(c.var.shop.randomBytes),
    faults: [],
    replaced,
  })
}

/** Keeps a finding with its photograph; what is wrong with either stands beside its field. */
export async function createFinding(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openStripDesk(c)
  const { input, sent } = await readUpload(c)
  const own = ownFields(input, 'fileSha256')
  const parsed = parseFinding(own)
  const picture = parsePicture(sent)
  const faults = findingFaults(parsed, picture)
  if (!parsed.ok || !picture.ok || faults.length > 0) {
    return sendFindingForm(c, desk, {
      values: refusedFindingValues(own, faults),
      formKey: typedText(input.formKey),
      faults,
      replaced: replacedRecord(desk.findings, typedText(own.replacesId)),
    })
  }
  return recordOnce(c, input, () => {
    const { workOrder } = desk
    const fresh = { ...parsed.value, workOrderId: workOrder.id, photo: picture.value }
    addFinding(store, fresh, actor(c))
    return `/work-orders/${workOrder.number}/strip`
  })
}

/**
 * The photograph of a finding: for whoever may see the results of its order; of one that was
 * corrected for the staff alone, since it is no result.
 */
export function showFindingPicture(c: AppContext): Response {
  const { findings, workOrder } = openStripDesk(c)
  const id = idOf(c.req.param('id'), 'no-page')
  const user = viewer(c)
  const shown = user.role === 'customer' ? currentOnly(findings) : findings
  const sha256 = shown.find((one) => one.id === id)?.photoSha256 ?? null
  if (sha256 === null || !maySeeResults(user, workOrder.stage)) {
    throw new AppError('not-found', 'no-page')
  }
  const { bytes, mediaType } = readStoredFile(c.var.shop.store, sha256)
  return new Response(new Uint8Array(bytes), {
    headers: {
      'content-type': mediaType,
      'content-disposition': 'inline',
      'x-content-type-options': 'nosniff',
      'cache-control': 'private, max-age=86400, immutable',
      'cross-origin-resource-policy': 'same-origin',
    },
  })
}

function sendFindingForm(
  c: AppContext,
  { workOrder, seal }: Evidence,
  drawn: {
    readonly values: FindingValues
    readonly formKey: string
    readonly faults: readonly Fault[]
    readonly replaced: Finding | undefined
  },
): Promise<Response> {
  const { values, formKey, faults, replaced } = drawn
  const form = {
    orderNumber: workOrder.number,
    sealSerial: seal.serial,
    isQuarantined: workOrder.decontamination === 'not-stated',
    typed: { values, faults },
    formKey,
    replaced: replaced ?? null,
  }
  const page = <FindingFormPage frame={frameOf(c, ['clock'])} form={form} />
  return sendPage(c, page, faults.length > 0 ? 422 : 200)
}
