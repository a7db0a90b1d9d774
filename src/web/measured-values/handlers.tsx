import { MeasuredPreview } from '../../../views/measured-values/preview.tsx'
import { measuredValuesWords } from '../../../views/words/en/measured-values.ts'
import { completeMeasuredValue } from '../../domain/complete-measured-value.ts'
import { parseMeasuredValue } from '../../domain/parse-measured-value.ts'
import { addMeasuredValue } from '../../store/add-measured-value.ts'
import { listMeasuredValues } from '../../store/list-measured-values.ts'
import { requireOpenOrder } from '../../store/require-open-order.ts'
import type { AppContext } from '../context.ts'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { newFormKey, recordOnce } from '../record-once.ts'
import { replacedRecord } from '../replaced-record.ts'
import { sendFragment } from '../send-page.ts'
import { sendQuarantine } from '../send-quarantine.tsx'
import { typedText } from '../typed-text.ts'
import { actor } from '../viewer.ts'
import { answerOf } from './answer-of.ts'
import { type MeasuredDesk, openMeasuredDesk } from './desk.ts'
import { dropEmptyReadings } from './drop-empty-readings.ts'
import { sendMeasuredForm } from './form-page.tsx'
import { familyAsked, freshValues, valuesOfInput, valuesOfRecord } from './form-values.ts'

export async function newMeasuredValue(c: AppContext): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const desk = openMeasuredDesk(c)
  requireOpenOrder(store, desk.workOrder.id)
  const values = listMeasuredValues(store, desk.workOrder.id)
  const replaced = replacedRecord(values, c.req.query('replaces'))
  const asked = replaced?.characteristic ?? c.req.query('characteristic')
  const quarantine = sendFaceQuarantine(c, desk, asked)
  if (quarantine !== null) return quarantine
  return sendMeasuredForm(c, desk, {
    values: replaced === undefined ? freshValues(c, desk) : valuesOfRecord(replaced),
    formKey: newFormKey(randomBytes),
    faults: [],
    replaced,
  })
}

/** Recomputes the answer while the form is being filled in; records nothing. */
export async function previewMeasuredValue(c: AppContext): Promise<Response> {
  const desk = openMeasuredDesk(c)
  const answer = answerOf(await readForm(c), desk)
  return sendFragment(c, <MeasuredPreview answer={answer} />)
}

export async function createMeasuredValue(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openMeasuredDesk(c)
  const input = await readForm(c)
  const own = dropEmptyReadings(ownFields(input))
  const quarantine = sendFaceQuarantine(c, desk, typedText(own.characteristic))
  if (quarantine !== null) return quarantine
  const parsed = parseMeasuredValue(own, desk)
  if (!parsed.ok) {
    const values = listMeasuredValues(store, desk.workOrder.id)
    return sendMeasuredForm(c, desk, {
      values: valuesOfInput(own),
      formKey: typedText(input.formKey),
      faults: parsed.faults,
      replaced: replacedRecord(values, typedText(own.replacesId)),
    })
  }
  return recordOnce(c, input, () => {
    const value = completeMeasuredValue({ ...parsed.value, workOrderId: desk.workOrder.id }, desk)
    addMeasuredValue(store, value, actor(c))
    return `/work-orders/${desk.workOrder.number}?recorded=measured-value`
  })
}

/** A face is read on an open seal; what is read with a dial at the machine needs none. */
function sendFaceQuarantine(
  c: AppContext,
  { workOrder }: MeasuredDesk,
  characteristic: string | undefined,
): Promise<Response> | null {
  const family = familyAsked(characteristic)
  return family === 'dial' ? null : sendQuarantine(c, workOrder, measuredValuesWords.title[family])
}
