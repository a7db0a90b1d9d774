import { confirmField } from '../../domain/confirmed.ts'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import type { LimitSet } from '../../domain/limit-set.ts'
import { offeredLimitSets } from '../../domain/offered-limit-sets.ts'
import { type ParsedReceipt, parseReceipt, receiptFields } from '../../domain/parse-receipt.ts'
import type { Seal } from '../../domain/seal.ts'
import { statedRuleFaults } from '../../domain/stated-rule-faults.ts'
import { addWorkOrder } from '../../store/add-work-order.ts'
import { customerRuleOf } from '../../store/customer-rule-of.ts'
import { defaultLimitSet } from '../../store/default-limit-set.ts'
import { listLimitSets } from '../../store/list-limit-sets.ts'
import { requireCustomer } from '../../store/require-customer.ts'
import { requireSeal } from '../../store/require-seal.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'
import { ownFields } from '../own-fields.ts'
import { recordOnce } from '../record-once.ts'
import { today } from '../today.ts'
import { typedText } from '../typed-text.ts'
import { actor, viewer } from '../viewer.ts'
import { sendReceiptForm } from './receipt-pages.tsx'

/** Receives a seal: makes its order, or shows the form again with what is wrong. */
export function receive(c: AppContext, input: Input): Promise<Response> | Response {
  const { store } = c.var.shop
  const seal = requireSeal(store, idOf(typedText(input.sealId), 'no-seal'))
  const parsed = parseReceipt(ownFields(input, 'sealId'), seal)
  const faults = parsed.ok ? statedFaults(c, parsed.value, seal) : parsed.faults
  if (!parsed.ok || faults.length > 0) {
    return sendReceiptForm(c, {
      seal,
      faults,
      typed: typedFields(input),
      formKey: typedText(input.formKey),
    })
  }
  return recordOnce(c, input, () => addOrder(c, seal, parsed.value))
}

function addOrder(c: AppContext, seal: Seal, stated: ParsedReceipt): string {
  const { store } = c.var.shop
  const { customerId } = seal
  const by = actor(c)
  const order = addWorkOrder(
    store,
    {
      ...stated,
      limitSetId: stated.limitSetId ?? defaultLimitSet(store, today(c)).id,
      customerId,
      sealId: seal.id,
      receivedAt: by.at,
      isInvented: requireCustomer(store, customerId).isInvented,
    },
    by,
  )
  return `/work-orders/${order.number}?recorded=receipt`
}

function statedFaults(c: AppContext, stated: ParsedReceipt, seal: Seal): readonly Fault[] {
  const agreed = customerRuleOf(c.var.shop.store, seal.customerId)
  const { role } = viewer(c)
  const ofRule = statedRuleFaults({ stated: stated.statedRule, agreed, role })
  return [...limitSetFaults(c, stated), ...ofRule]
}

function limitSetFaults(c: AppContext, { limitSetId }: ParsedReceipt): readonly Fault[] {
  if (limitSetId === null) return []
  const sets = listLimitSets(c.var.shop.store)
  const isIn = (some: readonly LimitSet[]) => some.some((one) => one.id === limitSetId)
  if (isIn(offeredLimitSets(sets, today(c)))) return []
  return [{ field: 'limitSetId', kind: isIn(sets) ? 'not-in-force' : 'not-known' }]
}

function typedFields(input: Input): Record<string, string> {
  const names = [...receiptFields, confirmField]
  return Object.fromEntries(names.map((name) => [name, typedText(input[name])]))
}
