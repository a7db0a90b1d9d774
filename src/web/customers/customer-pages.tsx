import { CustomerPage } from '../../../views/customer-page.tsx'
import { CustomersPage } from '../../../views/customers-page.tsx'
import type { Customer } from '../../domain/customer.ts'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import { agreedRuleFields } from '../../domain/parse-agreed-rule.ts'
import { customerFields } from '../../domain/parse-customer.ts'
import { equipmentFields } from '../../domain/parse-equipment.ts'
import { customerRuleOf } from '../../store/customer-rule-of.ts'
import { listCustomers } from '../../store/list-customers.ts'
import { listEquipment } from '../../store/list-equipment.ts'
import { listSeals } from '../../store/list-seals.ts'
import type { AppContext } from '../context.ts'
import { newFormKey } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { typedText } from '../typed-text.ts'
import { viewer } from '../viewer.ts'

type Refused = { readonly input: Input; readonly faults: readonly Fault[] }
/** The page of a customer has two forms. */
type RefusedAtCustomer = Refused & { readonly form?: 'position' | 'rule' }

/** The list of customers; with `refused` as the answer to the form of a new one. */
export function sendCustomers(c: AppContext, refused?: Refused): Promise<Response> {
  const { store } = c.var.shop
  const page = (
    <CustomersPage
      frame={frameOf(c)}
      customers={listCustomers(store)}
      mayAdd={viewer(c).role === 'manager'}
      form={formOf(c, customerFields, refused)}
    />
  )
  return sendPage(c, page, refused === undefined ? 200 : 422)
}

/** A customer with positions, seals and rule; with `refused` as the answer to one of its forms. */
export function sendCustomer(
  c: AppContext,
  customer: Customer,
  refused?: RefusedAtCustomer,
): Promise<Response> {
  const { store } = c.var.shop
  const { role } = viewer(c)
  const isOfRule = refused?.form === 'rule'
  const page = (
    <CustomerPage
      frame={frameOf(c)}
      customer={customer}
      equipment={listEquipment(store, customer.id)}
      seals={listSeals(store, { customerId: customer.id })}
      isRecorded={c.req.query('recorded') !== undefined}
      form={formOf(c, equipmentFields, isOfRule ? undefined : refused)}
      rule={customerRuleOf(store, customer.id) ?? null}
      ruleForm={
        role === 'inspector' || role === 'manager'
          ? formOf(c, agreedRuleFields, isOfRule ? refused : undefined)
          : null
      }
    />
  )
  return sendPage(c, page, refused === undefined ? 200 : 422)
}

function formOf(c: AppContext, names: readonly string[], refused: Refused | undefined) {
  const input = refused?.input ?? {}
  const formKey = typedText(input.formKey)
  return {
    typed: Object.fromEntries(names.map((name) => [name, typedText(input[name])])),
    faults: refused?.faults ?? [],
    formKey: formKey === '' ? newFormKey(c.var.shop.randomBytes) : formKey,
  }
}
