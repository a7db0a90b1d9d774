import type { Fault } from '../../domain/fault.ts'
import { parseAgreedRule } from '../../domain/parse-agreed-rule.ts'
import { parseCustomer } from '../../domain/parse-customer.ts'
import { parseEquipment } from '../../domain/parse-equipment.ts'
import { addCustomer } from '../../store/add-customer.ts'
import { addEquipment } from '../../store/add-equipment.ts'
import { agreeCustomerRule as agreeRule } from '../../store/agree-customer-rule.ts'
import { requireCustomer } from '../../store/require-customer.ts'
import type { AppContext } from '../context.ts'
import { faultOfConflict } from '../fault-of-conflict.ts'
import { idOf } from '../id-of.ts'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { recordOnce } from '../record-once.ts'
import { actor } from '../viewer.ts'
import { sendCustomer, sendCustomers } from './customer-pages.tsx'
import { recordSeal } from './record-seal.tsx'
import { sendSealForm } from './seal-form.tsx'

export function listCustomers(c: AppContext): Promise<Response> {
  return sendCustomers(c)
}

const nameTaken: Fault = { field: 'name', kind: 'taken' }

export async function createCustomer(c: AppContext): Promise<Response> {
  const { store, isInvented } = c.var.shop
  const input = await readForm(c)
  const parsed = parseCustomer(ownFields(input))
  if (!parsed.ok) return sendCustomers(c, { input, faults: parsed.faults })
  const answer = faultOfConflict({ 'name-taken': nameTaken }, () =>
    recordOnce(c, input, () => {
      const { id } = addCustomer(store, { ...parsed.value, isInvented }, actor(c))
      return `/customers/${id}?recorded=customer`
    }),
  )
  return answer instanceof Response ? answer : sendCustomers(c, { input, faults: [answer] })
}

export function showCustomer(c: AppContext): Promise<Response> {
  return sendCustomer(c, customerOf(c))
}

const tagTaken: Fault = { field: 'tag', kind: 'taken' }

export async function createEquipment(c: AppContext): Promise<Response> {
  const customer = customerOf(c)
  const input = await readForm(c)
  const parsed = parseEquipment(ownFields(input))
  if (!parsed.ok) return sendCustomer(c, customer, { input, faults: parsed.faults })
  const answer = faultOfConflict({ 'tag-taken': tagTaken }, () =>
    recordOnce(c, input, () => {
      addEquipment(c.var.shop.store, { ...parsed.value, customerId: customer.id }, actor(c))
      return `/customers/${customer.id}?recorded=position`
    }),
  )
  return answer instanceof Response
    ? answer
    : sendCustomer(c, customer, { input, faults: [answer] })
}

export async function agreeCustomerRule(c: AppContext): Promise<Response> {
  const customer = customerOf(c)
  const { id: customerId } = customer
  const input = await readForm(c)
  const parsed = parseAgreedRule(ownFields(input))
  if (!parsed.ok) {
    return sendCustomer(c, customer, { input, faults: parsed.faults, form: 'rule' })
  }
  return recordOnce(c, input, () => {
    agreeRule(c.var.shop.store, { customerId, stated: parsed.value }, actor(c))
    return `/customers/${customerId}?recorded=rule`
  })
}

export function newSeal(c: AppContext): Promise<Response> {
  const isReceipt = c.req.query('next') === 'receipt'
  return sendSealForm(c, customerOf(c), { input: {}, faults: [], isReceipt })
}

export async function createSeal(c: AppContext): Promise<Response> {
  return recordSeal(c, customerOf(c), await readForm(c))
}

function customerOf(c: AppContext) {
  return requireCustomer(c.var.shop.store, idOf(c.req.param('id'), 'no-customer'))
}
