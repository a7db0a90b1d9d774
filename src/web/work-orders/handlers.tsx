import { missingForHandOver } from '../../domain/missing-for-hand-over.ts'
import { requireMayMove } from '../../domain/order-acts.ts'
import { agreedRuleFields, parseAgreedRule } from '../../domain/parse-agreed-rule.ts'
import { parseDecontamination, parseHandOver, parseMove } from '../../domain/parse-order-act.ts'
import { openStages } from '../../domain/stage.ts'
import { addHandOver } from '../../store/add-hand-over.ts'
import { agreeOrderRule as agreeRule } from '../../store/agree-order-rule.ts'
import { moveWorkOrder as storeMove } from '../../store/move-work-order.ts'
import { requireSeal } from '../../store/require-seal.ts'
import { stateDecontamination as storeStatement } from '../../store/state-decontamination.ts'
import { sendBench } from '../bench/bench-page.tsx'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { newFormKey, recordOnce } from '../record-once.ts'
import { typedText } from '../typed-text.ts'
import { actor, viewer } from '../viewer.ts'
import { placeOf } from './find.ts'
import { sendList } from './list-page.tsx'
import { evidenceOf, sendOrder } from './order-page.tsx'
import { sendCustomerChoice, sendReceiptForm, sendSealChoice } from './receipt-pages.tsx'
import { receive } from './receive.tsx'

export function listWorkOrders(c: AppContext): Promise<Response> {
  return sendList(c)
}

export function findWorkOrder(c: AppContext): Promise<Response> | Response {
  const { store, now } = c.var.shop
  const typed = c.req.query('number')?.trim().slice(0, 80) ?? ''
  if (typed === '') return sendBench(c, { typed, isEmpty: true })
  const year = now().getUTCFullYear()
  return c.redirect(placeOf(store, typed, { year, user: viewer(c) }), 303)
}

/** The steps of receipt follow from what the address names: nothing, a customer, a seal. */
export function newWorkOrder(c: AppContext): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const sealId = c.req.query('seal')
  const customerId = c.req.query('customer')
  if (sealId !== undefined) {
    const seal = requireSeal(store, idOf(sealId, 'no-seal'))
    return sendReceiptForm(c, { seal, typed: {}, faults: [], formKey: newFormKey(randomBytes) })
  }
  if (customerId !== undefined) return sendSealChoice(c, idOf(customerId, 'no-customer'))
  return sendCustomerChoice(c)
}

export async function createWorkOrder(c: AppContext): Promise<Response> {
  return receive(c, await readForm(c))
}

export function showWorkOrder(c: AppContext): Promise<Response> {
  const recorded = c.req.query('recorded')
  const done =
    recorded === 'receipt' ? 'received' : recorded === 'hand-over' ? 'handedOver' : 'recorded'
  return sendOrder(c, evidenceOf(c), recorded === undefined ? {} : { done })
}

export async function moveWorkOrder(c: AppContext): Promise<Response> {
  const evidence = evidenceOf(c)
  const input = await readForm(c)
  const parsed = parseMove(ownFields(input))
  if (!parsed.ok) {
    const withdrawal = { reason: typedText(input.reason), faults: parsed.faults }
    return sendOrder(c, evidence, { typed: { withdrawal }, formKey: pageKey(input.formKey) })
  }
  requireMayMove(viewer(c).role, parsed.value.to)
  const { id, number } = evidence.workOrder
  return recordOnce(c, input, () => {
    storeMove(c.var.shop.store, { workOrderId: id, ...parsed.value }, actor(c))
    return `/work-orders/${number}?recorded=stage`
  })
}

export async function stateDecontamination(c: AppContext): Promise<Response> {
  const evidence = evidenceOf(c)
  const input = await readForm(c)
  const parsed = parseDecontamination(ownFields(input))
  if (!parsed.ok) {
    const state = typedText(input.decontamination)
    const decontamination = { state, lastFluid: typedText(input.lastFluid), faults: parsed.faults }
    return sendOrder(c, evidence, { typed: { decontamination }, formKey: pageKey(input.formKey) })
  }
  const { id, number } = evidence.workOrder
  return recordOnce(c, input, () => {
    storeStatement(c.var.shop.store, { workOrderId: id, ...parsed.value }, actor(c))
    return `/work-orders/${number}?recorded=decontamination`
  })
}

export async function agreeOrderRule(c: AppContext): Promise<Response> {
  const evidence = evidenceOf(c)
  const input = await readForm(c)
  const parsed = parseAgreedRule(ownFields(input))
  if (!parsed.ok) {
    const values = Object.fromEntries(agreedRuleFields.map((one) => [one, typedText(input[one])]))
    const rule = { values, faults: parsed.faults }
    return sendOrder(c, evidence, { typed: { rule }, formKey: pageKey(input.formKey) })
  }
  const { id, number } = evidence.workOrder
  return recordOnce(c, input, () => {
    agreeRule(c.var.shop.store, { workOrderId: id, stated: parsed.value }, actor(c))
    return `/work-orders/${number}?recorded=rule`
  })
}

/** Refused with the list of what is missing, on the page that shows where to make it good. */
export async function handOver(c: AppContext): Promise<Response> {
  const evidence = evidenceOf(c)
  const input = await readForm(c)
  const parsed = parseHandOver(ownFields(input))
  const { id, number, stage } = evidence.workOrder
  const isMissing = openStages.includes(stage) && missingForHandOver(evidence).length > 0
  if (!parsed.ok || isMissing) {
    const typed = {
      isHandOverRefused: isMissing,
      note: typedText(input.note),
      noteFaults: parsed.ok ? [] : parsed.faults,
    }
    return sendOrder(c, evidence, { typed, formKey: pageKey(input.formKey) })
  }
  return recordOnce(c, input, () => {
    addHandOver(c.var.shop.store, { workOrderId: id, ...parsed.value }, actor(c))
    return `/work-orders/${number}?recorded=hand-over`
  })
}

/** The page's forms share one key, each with an ending of its own. */
function pageKey(formKey: unknown): string {
  return typedText(formKey).replace(/-(hand-over|decontamination|rule|stripped|withdrawn)$/, '')
}
