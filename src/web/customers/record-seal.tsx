import type { Customer } from '../../domain/customer.ts'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import { parseSeal } from '../../domain/parse-seal.ts'
import { addSeal } from '../../store/add-seal.ts'
import { listEquipment } from '../../store/list-equipment.ts'
import type { AppContext } from '../context.ts'
import { faultOfConflict } from '../fault-of-conflict.ts'
import { recordOnce } from '../record-once.ts'
import { typedText } from '../typed-text.ts'
import { actor } from '../viewer.ts'
import { sendSealForm } from './seal-form.tsx'
import { faultsInForm, sealInput } from './seal-input.ts'

const serialTaken: Fault = { field: 'serial', kind: 'taken' }

/** Records a seal of a customer, or shows the form again; receipt goes on from there. */
export function recordSeal(
  c: AppContext,
  customer: Customer,
  input: Input,
): Promise<Response> | Response {
  const { store } = c.var.shop
  const isReceipt = input.next === 'receipt'
  const again = (faults: readonly Fault[]) =>
    sendSealForm(c, customer, { input, faults, isReceipt })
  const asked = typedText(input.equipmentId)
  const position = listEquipment(store, customer.id).find((one) => String(one.id) === asked)
  const positionFaults: readonly Fault[] =
    asked === '' || position !== undefined ? [] : [{ field: 'equipmentId', kind: 'not-known' }]
  const form = sealInput(input)
  const parsed = parseSeal(form.input)
  if (!parsed.ok) return again([...faultsInForm(parsed.faults, form), ...positionFaults])
  if (positionFaults.length > 0) return again(positionFaults)
  const answer = faultOfConflict({ 'serial-taken': serialTaken }, () =>
    recordOnce(c, input, () => {
      const place = { customerId: customer.id, equipmentId: position?.id ?? null }
      const seal = addSeal(store, { ...parsed.value, ...place }, actor(c))
      if (isReceipt) return `/work-orders/new?seal=${seal.id}`
      return `/customers/${customer.id}?recorded=seal`
    }),
  )
  return answer instanceof Response ? answer : again([answer])
}
