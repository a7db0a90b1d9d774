import { openFields } from '../../domain/fields.ts'
import type { LimitSet } from '../../domain/limit-set.ts'
import { offeredLimitSets } from '../../domain/offered-limit-sets.ts'
import { idBounds } from '../../domain/parse-instrument-id.ts'
import { parseReceipt } from '../../domain/parse-receipt.ts'
import {
  parseWorkOrderSubject,
  receiptPart,
  type WorkOrderSubject,
} from '../../domain/parse-work-order-body.ts'
import type { Seal } from '../../domain/seal.ts'
import { allStages } from '../../domain/stage.ts'
import { statedRuleFaults } from '../../domain/stated-rule-faults.ts'
import { addEquipment } from '../../store/add-equipment.ts'
import { addSeal } from '../../store/add-seal.ts'
import { addWorkOrder } from '../../store/add-work-order.ts'
import { customerRuleOf } from '../../store/customer-rule-of.ts'
import { defaultLimitSet } from '../../store/default-limit-set.ts'
import { listLimitSets } from '../../store/list-limit-sets.ts'
import { listWorkOrders } from '../../store/list-work-orders.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { requireCustomer } from '../../store/require-customer.ts'
import { requireLimitSet } from '../../store/require-limit-set.ts'
import { requireSeal } from '../../store/require-seal.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { today } from '../today.ts'
import { actor, viewer } from '../viewer.ts'
import { answerOnce } from './answer-once.ts'
import { InputRefused } from './input-refused.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'
import { workOrderAnswer } from './work-order-answer.ts'

export async function apiCreateWorkOrder(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const { store, isInvented } = c.var.shop
  return answerOnce(c, body, () => {
    const subject = mustParse(parseWorkOrderSubject(body.input))
    const seal = sealOf(c, subject)
    const receipt = mustParse(parseReceipt(receiptPart(body.input), seal))
    const limitSet = limitSetOf(c, receipt.limitSetId)
    const agreed = customerRuleOf(store, subject.customerId)
    const { role } = viewer(c)
    const faults = statedRuleFaults({ stated: receipt.statedRule, agreed, role })
    if (faults.length > 0) throw new InputRefused(faults)
    const order = addWorkOrder(
      store,
      {
        ...receipt,
        limitSetId: limitSet.id,
        customerId: subject.customerId,
        sealId: seal.id,
        receivedAt: actor(c).at,
        isInvented,
      },
      actor(c),
    )
    return { status: 201, body: workOrderAnswer(readEvidence(store, order.id), viewer(c)) }
  })
}

/** The set that is named, which must be in force; else the one that is offered first. */
function limitSetOf(c: AppContext, id: number | null): LimitSet {
  const { store } = c.var.shop
  if (id === null) return defaultLimitSet(store, today(c))
  const named = requireLimitSet(store, id)
  const offered = offeredLimitSets(listLimitSets(store), today(c))
  if (offered.some((one) => one.id === named.id)) return named
  throw new InputRefused([{ field: 'limitSetId', kind: 'not-in-force' }])
}

function sealOf(c: AppContext, subject: WorkOrderSubject): Seal {
  const { store } = c.var.shop
  const { customerId, sealId, seal, equipment } = subject
  requireCustomer(store, customerId)
  if (seal === null) {
    const known = requireSeal(store, sealId ?? 0)
    if (known.customerId !== customerId) {
      throw new InputRefused([{ field: 'sealId', kind: 'not-known' }])
    }
    return known
  }
  const equipmentId =
    equipment === null
      ? subject.equipmentId
      : addEquipment(store, { ...equipment, customerId }, actor(c)).id
  return addSeal(store, { ...seal, customerId, equipmentId }, actor(c))
}

/** A customer's list holds their own orders, whatever they ask for. */
export function apiListWorkOrders(c: AppContext): Response {
  const user = viewer(c)
  const fields = openFields(c.req.query())
  fields.only('state', 'customer', 'q', 'cursor', 'limit')
  const stage = fields.optionalChoice('state', allStages)
  const asked = fields.optionalWhole('customer', idBounds)
  const cursor = fields.optionalWhole('cursor', idBounds)
  const limit = fields.optionalWhole('limit', { min: 1, max: 200 }) ?? 50
  if (fields.faults.length > 0) throw new InputRefused(fields.faults)
  const customerId = user.customerId ?? asked
  if (user.customerId !== null && asked !== null && asked !== user.customerId) {
    return c.json({ items: [], nextCursor: null })
  }
  const page = listWorkOrders(c.var.shop.store, {
    ...(stage === null ? {} : { stage }),
    ...(customerId === null ? {} : { customerId }),
    ...(fields.isGiven('q') ? { q: fields.typed('q') } : {}),
    ...(cursor === null ? {} : { cursor: String(cursor) }),
    limit,
  })
  return c.json(page)
}

export function apiShowWorkOrder(c: AppContext): Response {
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  return c.json(workOrderAnswer(readEvidence(store, order.id), viewer(c)))
}
