import type { PartLineValues } from '../../../views/findings/form-values.ts'
import { PartLineFormPage } from '../../../views/part-line-form-page.tsx'
import type { Evidence } from '../../domain/evidence.ts'
import type { Fault } from '../../domain/fault.ts'
import { parsePartLine } from '../../domain/parse-part-line.ts'
import type { PartLine } from '../../domain/part-line.ts'
import { addPartLine } from '../../store/add-part-line.ts'
import { requireOpenOrder } from '../../store/require-open-order.ts'
import type { AppContext } from '../context.ts'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { newFormKey, recordOnce } from '../record-once.ts'
import { replacedRecord } from '../replaced-record.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { typedText } from '../typed-text.ts'
import { actor } from '../viewer.ts'
import { openStripDesk } from './desk.ts'
import { freshPartLineValues, partLineValuesOf, partLineValuesOfInput } from './form-values.ts'

export function newPartLine(c: AppContext): Promise<Response> {
  const desk = openStripDesk(c)
  requireOpenOrder(c.var.shop.store, desk.workOrder.id)
  const replaced = replacedRecord(desk.partLines, c.req.query('replaces'))
  return sendPartLineForm(c, desk, {
    values:
      replaced === undefined
        ? freshPartLineValues(c.req.query('part'))
        : partLineValuesOf(replaced),
    formKey: newFormKey(c.var.shop.randomBytes),
    faults: [],
    replaced,
  })
}

export async function createPartLine(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openStripDesk(c)
  const input = await readForm(c)
  const own = ownFields(input)
  const parsed = parsePartLine(own)
  if (!parsed.ok) {
    return sendPartLineForm(c, desk, {
      values: partLineValuesOfInput(own),
      formKey: typedText(input.formKey),
      faults: parsed.faults,
      replaced: replacedRecord(desk.partLines, typedText(own.replacesId)),
    })
  }
  return recordOnce(c, input, () => {
    addPartLine(store, { ...parsed.value, workOrderId: desk.workOrder.id }, actor(c))
    return `/work-orders/${desk.workOrder.number}/strip#parts`
  })
}

function sendPartLineForm(
  c: AppContext,
  { workOrder, seal }: Evidence,
  drawn: {
    readonly values: PartLineValues
    readonly formKey: string
    readonly faults: readonly Fault[]
    readonly replaced: PartLine | undefined
  },
): Promise<Response> {
  const { values, formKey, faults, replaced } = drawn
  const form = {
    orderNumber: workOrder.number,
    sealSerial: seal.serial,
    isQuarantined: workOrder.decontamination === 'not-stated',
    typed: { values, faults },
    formKey,
    replaced: replaced ?? null,
  }
  const page = <PartLineFormPage frame={frameOf(c)} form={form} />
  return sendPage(c, page, faults.length > 0 ? 422 : 200)
}
