import { AppError } from '../../domain/app-error.ts'
import { parseConcession } from '../../domain/parse-concession.ts'
import { parseDecision } from '../../domain/parse-decision.ts'
import type { WorkOrder } from '../../domain/work-order.ts'
import { addConcession } from '../../store/add-concession.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { readForm } from '../read-form.ts'
import { recordOnce } from '../record-once.ts'
import { tryPassword } from '../try-password.ts'
import { actor, viewer } from '../viewer.ts'
import {
  concessionPage,
  conflictPage,
  evidencePage,
  faultyPage,
  refusedPage,
} from './evidence-pages.tsx'
import { sendInspection } from './list-page.tsx'
import { refuseOrder } from './refuse-order.ts'
import { releaseOrder } from './release-order.ts'
import { ReleaseRefused } from './release-refused.ts'

export function listInspection(c: AppContext): Promise<Response> {
  return sendInspection(c)
}

export function showEvidence(c: AppContext): Promise<Response> {
  return evidencePage(c, orderOf(c))
}

export async function decide(c: AppContext): Promise<Response> {
  const order = orderOf(c)
  const input = await readForm(c)
  const parsed = parseDecision(input)
  if (!parsed.ok) return faultyPage(c, order, input, { faults: parsed.faults })
  // What is kept to know a resent form again must not be a way to the password.
  const { password, ...signed } = input
  const signature = await tryPassword(c, viewer(c).name, String(password))
  if (signature.kind === 'too-soon') {
    return faultyPage(c, order, input, { waitS: signature.waitS })
  }
  if (signature.kind === 'wrong') {
    return faultyPage(c, order, input, { faults: [{ field: 'password', kind: 'wrong-password' }] })
  }
  try {
    const asked = {
      workOrderId: order.id,
      by: viewer(c),
      actor: actor(c),
      reason: parsed.value.reason,
      fingerprint: String(signed.fingerprint),
    }
    if (parsed.value.outcome === 'refuse') {
      return recordOnce(c, signed, () => refuseOrder(c.var.shop, asked))
    }
    return await releaseOrder(c.var.shop, asked, (work) => recordOnce(c, signed, work))
  } catch (error) {
    if (error instanceof ReleaseRefused) return refusedPage(c, order, input, error.faults)
    if (error instanceof AppError && error.kind === 'conflict') {
      return conflictPage(c, order, input, error)
    }
    throw error
  }
}

/** Records that the customer takes a result which doesn't keep its limit. */
export async function createConcession(c: AppContext): Promise<Response> {
  const order = orderOf(c)
  const input = await readForm(c)
  const parsed = parseConcession(input)
  if (!parsed.ok) return concessionPage(c, order, { input, faults: parsed.faults })
  const by = viewer(c)
  const { value: asked } = parsed
  try {
    return recordOnce(c, input, () => {
      const { id } = addConcession(c.var.shop.store, { workOrderId: order.id, asked, by }, actor(c))
      return `/work-orders/${order.number}/inspection?conceded=${id}`
    })
  } catch (error) {
    if (!(error instanceof AppError)) throw error
    return concessionPage(c, order, { input, faults: [], conflict: error })
  }
}

/** Staff see every customer's orders. */
function orderOf(c: AppContext): WorkOrder {
  return requireWorkOrder(c.var.shop.store, c.req.param('number') ?? '', viewer(c))
}
