import { LapPreview } from '../../../views/lap-cycles/preview.tsx'
import { lappingWords } from '../../../views/words/en/lapping.ts'
import { parseLapCycle } from '../../domain/parse-lap-cycle.ts'
import { addLapCycle } from '../../store/add-lap-cycle.ts'
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
import { lapAnswerOf } from './answer-of.ts'
import { openLapDesk } from './desk.ts'
import { sendLapForm } from './form-page.tsx'
import { freshLapValues, lapValuesOfInput, lapValuesOfRecord } from './form-values.ts'
import { withPlate } from './with-plate.ts'

export async function newLapCycle(c: AppContext): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const desk = openLapDesk(c)
  requireOpenOrder(store, desk.evidence.workOrder.id)
  const quarantine = sendQuarantine(c, desk.evidence.workOrder, lappingWords.title)
  if (quarantine !== null) return quarantine
  const replaced = replacedRecord(desk.evidence.lapCycles, c.req.query('replaces'))
  return sendLapForm(c, desk, {
    values: replaced === undefined ? freshLapValues(c, desk) : lapValuesOfRecord(replaced, desk),
    formKey: newFormKey(randomBytes),
    faults: [],
    replaced,
  })
}

/** Recomputes what is left of the face while the form is being filled in; records nothing. */
export async function previewLapCycle(c: AppContext): Promise<Response> {
  const desk = openLapDesk(c)
  return sendFragment(c, <LapPreview answer={lapAnswerOf(await readForm(c), desk)} />)
}

export async function createLapCycle(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openLapDesk(c)
  const { workOrder, seal, lapCycles } = desk.evidence
  const input = await readForm(c)
  const quarantine = sendQuarantine(c, workOrder, lappingWords.title)
  if (quarantine !== null) return quarantine
  const own = ownFields(input)
  const parsed = parseLapCycle(withPlate(own), { components: seal.components })
  if (!parsed.ok) {
    return sendLapForm(c, desk, {
      values: lapValuesOfInput(own),
      formKey: typedText(input.formKey),
      faults: parsed.faults,
      replaced: replacedRecord(lapCycles, typedText(own.replacesId)),
    })
  }
  return recordOnce(c, input, () => {
    addLapCycle(store, { ...parsed.value, workOrderId: workOrder.id }, actor(c))
    return `/work-orders/${workOrder.number}?recorded=lap-cycle`
  })
}
