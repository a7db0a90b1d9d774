import { completeFlatnessReading } from '../../domain/complete-flatness-reading.ts'
import { completeStaticTest } from '../../domain/complete-static-test.ts'
import { openFields } from '../../domain/fields.ts'
import { missingForHandOver } from '../../domain/missing-for-hand-over.ts'
import { noteLength, parseFlatnessReading } from '../../domain/parse-flatness-reading.ts'
import { parseStaticTestBody } from '../../domain/parse-static-test-body.ts'
import { hasMarks } from '../../domain/parse-whole-face-body.ts'
import type { WorkOrder } from '../../domain/work-order.ts'
import { addFlatnessReading } from '../../store/add-flatness-reading.ts'
import { addHandOver } from '../../store/add-hand-over.ts'
import { addStaticTest } from '../../store/add-static-test.ts'
import { listInstruments } from '../../store/list-instruments.ts'
import { listUseExceptions } from '../../store/list-use-exceptions.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { requireSeal } from '../../store/require-seal.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { actor, viewer } from '../viewer.ts'
import { answerOnce } from './answer-once.ts'
import { InputRefused } from './input-refused.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'
import { SomethingMissing } from './something-missing.ts'
import { createMarkedReading, createPhotoReading } from './whole-face-readings.ts'

export async function apiCreateFlatnessReading(c: AppContext): Promise<Response> {
  const order = orderOf(c)
  const { store } = c.var.shop
  const contextOf = () => {
    const { components } = requireSeal(store, order.sealId)
    return { components, ...usable(c, order), today: actor(c).at.slice(0, 10) }
  }
  const type = c.req.header('content-type') ?? ''
  if (type.toLowerCase().startsWith('multipart/form-data')) {
    return createPhotoReading(c, order, contextOf())
  }
  const body = await readJson(c)
  if (hasMarks(body.input)) return createMarkedReading(c, order, contextOf(), body)
  return answerOnce(c, body, () => {
    const by = actor(c)
    const context = contextOf()
    const reading = mustParse(parseFlatnessReading(body.input, context))
    const complete = completeFlatnessReading({ ...reading, workOrderId: order.id }, context)
    const { faceKind: _, ...fresh } = complete
    return { status: 201, body: addFlatnessReading(store, fresh, by) }
  })
}

export async function apiCreateStaticTest(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const order = orderOf(c)
  const { store } = c.var.shop
  return answerOnce(c, body, () => {
    const by = actor(c)
    const { receivedAt } = order
    const context = { ...usable(c, order), receivedAt, now: by.at }
    const test = mustParse(parseStaticTestBody(body.input, context))
    const complete = completeStaticTest({ ...test, workOrderId: order.id }, context)
    return { status: 201, body: addStaticTest(store, complete, by) }
  })
}

/** Refused with the list of what is missing, so that a program can say it to its user. */
export async function apiHandOver(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const order = orderOf(c)
  const { store } = c.var.shop
  return answerOnce(c, body, () => {
    const fields = openFields(body.input)
    fields.only('note')
    const note = fields.optionalText('note', noteLength.max)
    if (fields.faults.length > 0) throw new InputRefused(fields.faults)
    const missing = missingForHandOver(readEvidence(store, order.id))
    if (missing.length > 0) throw new SomethingMissing(missing)
    return { status: 201, body: addHandOver(store, { workOrderId: order.id, note }, actor(c)) }
  })
}

/** The instruments, and those that an inspector allowed for this order. */
function usable(c: AppContext, order: WorkOrder) {
  const { store } = c.var.shop
  return {
    instruments: listInstruments(store),
    exceptions: listUseExceptions(store, order.id),
  }
}

function orderOf(c: AppContext): WorkOrder {
  return requireWorkOrder(c.var.shop.store, c.req.param('number') ?? '', viewer(c))
}
