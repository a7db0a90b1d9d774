import { parseUseException } from '../../domain/parse-use-exception.ts'
import { parseUseExceptionAnswer } from '../../domain/parse-use-exception-answer.ts'
import type { WorkOrder } from '../../domain/work-order.ts'
import { addUseException } from '../../store/add-use-exception.ts'
import { answerUseException as storeAnswer } from '../../store/answer-use-exception.ts'
import { listInstruments } from '../../store/list-instruments.ts'
import { requireUseException } from '../../store/require-use-exception.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'
import { sendInspection } from '../inspection/list-page.tsx'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { recordOnce } from '../record-once.ts'
import { today } from '../today.ts'
import { typedText } from '../typed-text.ts'
import { actor, viewer } from '../viewer.ts'
import { sendExceptionForm } from './form-page.tsx'

export function newUseException(c: AppContext): Promise<Response> {
  return sendExceptionForm(c, orderOf(c))
}

export async function createUseException(c: AppContext): Promise<Response> {
  const order = orderOf(c)
  const { store } = c.var.shop
  const input = await readForm(c)
  const days = [order.receivedAt.slice(0, 10), today(c)]
  const context = { instruments: listInstruments(store), days }
  const parsed = parseUseException(ownFields(input), context)
  if (!parsed.ok) return sendExceptionForm(c, order, { input, faults: parsed.faults })
  const fresh = { ...parsed.value, workOrderId: order.id, by: viewer(c) }
  return recordOnce(c, input, () => {
    addUseException(store, fresh, actor(c))
    return `/work-orders/${order.number}?recorded=exception#exceptions`
  })
}

/** An inspector's word on one request. */
export async function answerUseException(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const { id } = requireUseException(store, idOf(c.req.param('id'), 'no-use-exception'))
  const input = await readForm(c)
  const parsed = parseUseExceptionAnswer(ownFields(input), today(c))
  if (!parsed.ok) {
    return sendInspection(c, {
      id,
      answer: typedText(input.answer),
      validUntil: typedText(input.validUntil),
      reason: typedText(input.reason),
      formKey: typedText(input.formKey),
      faults: parsed.faults,
    })
  }
  return recordOnce(c, input, () => {
    storeAnswer(store, { ...parsed.value, useExceptionId: id, by: viewer(c) }, actor(c))
    return '/inspection?answered'
  })
}

/** Staff see every customer's orders. */
function orderOf(c: AppContext): WorkOrder {
  return requireWorkOrder(c.var.shop.store, c.req.param('number') ?? '', viewer(c))
}
