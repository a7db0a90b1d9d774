import { SealFormPage, type SealFormTyped } from '../../../views/seal-form-page.tsx'
import { confirmField } from '../../domain/confirmed.ts'
import type { Customer } from '../../domain/customer.ts'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import { componentKinds } from '../../domain/seal.ts'
import { listEquipment } from '../../store/list-equipment.ts'
import type { AppContext } from '../context.ts'
import { nestedText } from '../nested-text.ts'
import { newFormKey } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { typedText } from '../typed-text.ts'

const sealTexts = [
  'serial',
  'drawing',
  'drawingRevision',
  'size',
  'equipmentId',
  'arrangement',
  'shaftDiameterMm',
  confirmField,
] as const

const componentTexts = [
  'material',
  'outerDiameterMm',
  'innerDiameterMm',
  'noseHeightMm',
  'minimumNoseHeightMm',
] as const

/** The form of a new seal; what was typed comes back into it. */
export function sendSealForm(
  c: AppContext,
  customer: Customer,
  form: { readonly input: Input; readonly faults: readonly Fault[]; readonly isReceipt: boolean },
): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const formKey = typedText(form.input.formKey)
  const page = (
    <SealFormPage
      frame={frameOf(c)}
      customer={customer}
      equipment={listEquipment(store, customer.id)}
      typed={typedOf(form.input)}
      faults={form.faults}
      formKey={formKey === '' ? newFormKey(randomBytes) : formKey}
      isReceipt={form.isReceipt}
    />
  )
  return sendPage(c, page, form.faults.length > 0 ? 422 : 200)
}

function typedOf(input: Input): SealFormTyped {
  const parts: readonly unknown[] = Array.isArray(input.components) ? input.components : []
  return {
    texts: Object.fromEntries(sealTexts.map((name) => [name, typedText(input[name])])),
    components: componentKinds.map((_, place) => {
      return Object.fromEntries(
        componentTexts.map((name) => [name, nestedText(parts[place], name)]),
      )
    }),
  }
}
