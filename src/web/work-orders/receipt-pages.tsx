import { ReceiptCustomerPage, ReceiptPage, ReceiptSealPage } from '../../../views/receipt-page.tsx'
import type { ReceiptTyped } from '../../../views/receipt-typed.ts'
import { houseRule } from '../../domain/agreed-rule.ts'
import type { Fault } from '../../domain/fault.ts'
import { offeredLimitSets } from '../../domain/offered-limit-sets.ts'
import type { Seal } from '../../domain/seal.ts'
import { customerRuleOf } from '../../store/customer-rule-of.ts'
import { defaultLimitSet } from '../../store/default-limit-set.ts'
import { listCustomers } from '../../store/list-customers.ts'
import { listLimitSets } from '../../store/list-limit-sets.ts'
import { listSeals } from '../../store/list-seals.ts'
import { requireCustomer } from '../../store/require-customer.ts'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { today } from '../today.ts'
import { viewer } from '../viewer.ts'

/** Step 1: whose seal it is. */
export function sendCustomerChoice(c: AppContext): Promise<Response> {
  const page = (
    <ReceiptCustomerPage
      frame={frameOf(c)}
      customers={listCustomers(c.var.shop.store)}
      mayAddCustomer={viewer(c).role === 'manager'}
    />
  )
  return sendPage(c, page)
}

/** Step 2: which of the customer's seals. */
export function sendSealChoice(c: AppContext, customerId: number): Promise<Response> {
  const { store } = c.var.shop
  const customer = requireCustomer(store, customerId)
  const seals = listSeals(store, { customerId })
  return sendPage(c, <ReceiptSealPage frame={frameOf(c)} customer={customer} seals={seals} />)
}

/** Step 3: what is stated; also the answer to a form that was refused. */
export function sendReceiptForm(
  c: AppContext,
  form: {
    readonly seal: Seal
    readonly typed: ReceiptTyped
    readonly faults: readonly Fault[]
    readonly formKey: string
  },
): Promise<Response> {
  const { store } = c.var.shop
  const limitSetId = String(defaultLimitSet(store, today(c)).id)
  const agreed = customerRuleOf(store, form.seal.customerId)
  const page = (
    <ReceiptPage
      frame={frameOf(c)}
      customer={requireCustomer(store, form.seal.customerId)}
      seal={form.seal}
      limitSets={offeredLimitSets(listLimitSets(store), today(c))}
      agreedRule={agreed ?? houseRule}
      mayStateRule={agreed === undefined || viewer(c).role !== 'technician'}
      typed={{ limitSetId, ...form.typed }}
      faults={form.faults}
      formKey={form.formKey}
    />
  )
  return sendPage(c, page, form.faults.length > 0 ? 422 : 200)
}
