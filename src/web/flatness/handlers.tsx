import { FlatnessPreview } from '../../../views/flatness/preview.tsx'
import { flatnessWords } from '../../../views/words/en/flatness.ts'
import { carriedFlatnessBudget } from '../../domain/carried-flatness-budget.ts'
import { completeFlatnessReading } from '../../domain/complete-flatness-reading.ts'
import type { NewFlatnessReading } from '../../domain/flatness.ts'
import {
  type FlatnessBudgetInput,
  noFlatnessBudgetInput,
} from '../../domain/flatness-budget-input.ts'
import { flatnessFormBudget } from '../../domain/flatness-form-budget.ts'
import { parseFlatnessReading } from '../../domain/parse-flatness-reading.ts'
import type { ReaderSpread } from '../../domain/reader-spreads.ts'
import { lampIds } from '../../science/optics/lamps.ts'
import { addFlatnessReading } from '../../store/add-flatness-reading.ts'
import { listFlatnessReadings } from '../../store/list-flatness-readings.ts'
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
import { type FlatnessDesk, openFlatnessDesk } from './desk.ts'
import { dropEmptyDirections } from './drop-empty-directions.ts'
import { sendFlatnessForm } from './form-page.tsx'
import { freshValues, valuesOfInput, valuesOfReading } from './form-values.ts'
import { askedSpread, budgetWithSpread, spreadsBeside } from './reader-spread.ts'

export async function newFlatnessReading(c: AppContext): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const desk = openFlatnessDesk(c)
  requireOpenOrder(store, desk.workOrder.id)
  const quarantine = sendQuarantine(c, desk.workOrder, flatnessWords.title)
  if (quarantine !== null) return quarantine
  const readings = listFlatnessReadings(store, desk.workOrder.id)
  const replaced = replacedRecord(readings, c.req.query('replaces'))
  return sendFlatnessForm(c, desk, {
    values: replaced === undefined ? freshValues(c, desk) : valuesOfReading(replaced),
    formKey: newFormKey(randomBytes),
    faults: [],
    replaced,
  })
}

/** Recomputes the answer while the form is being filled in; records nothing. */
export async function previewFlatness(c: AppContext): Promise<Response> {
  const desk = openFlatnessDesk(c)
  const input = await readForm(c)
  const readings = listFlatnessReadings(c.var.shop.store, desk.workOrder.id)
  const replaced = readings.find((one) => String(one.id) === typedText(input.replacesId))
  return sendFragment(
    c,
    <FlatnessPreview
      answer={answerOf(input, desk, replaced)}
      values={valuesOfInput(input)}
      instruments={desk.instruments}
    />,
  )
}

export async function createFlatnessReading(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openFlatnessDesk(c)
  const input = await readForm(c)
  const quarantine = sendQuarantine(c, desk.workOrder, flatnessWords.title)
  if (quarantine !== null) return quarantine
  const own = ownFields(input, 'after')
  const asked = flatnessFormBudget(dropEmptyDirections(own), desk.components)
  const parsed = parseFlatnessReading(asked, desk)
  const { flatnessReadings: readings } = desk
  const replacedId = readings.find((one) => String(one.id) === typedText(own.replacesId))?.id
  const { spread, faults } = askedSpread(own, spreadsBeside(desk, replacedId))
  if (!parsed.ok || faults.length > 0) {
    return sendFlatnessForm(c, desk, {
      values: valuesOfInput(own),
      formKey: typedText(input.formKey),
      faults: [...(parsed.ok ? [] : parsed.faults), ...faults],
      replaced: replacedRecord(readings, typedText(own.replacesId)),
    })
  }
  return recordOnce(c, input, () => {
    const { replacesId } = parsed.value
    const replaced = readings.find((one) => one.id === replacesId)
    const entered = parsed.value.budgetInput ?? noFlatnessBudgetInput
    const stated = withSpread(desk, entered, spread, parsed.value)
    const budgetInput = carriedFlatnessBudget(stated, replaced)
    const reading = { ...parsed.value, budgetInput, workOrderId: desk.workOrder.id }
    const { faceKind: _, ...fresh } = completeFlatnessReading(reading, desk)
    addFlatnessReading(store, fresh, actor(c))
    return whereNext(desk, reading.componentId, typedText(input.after))
  })
}

/** Back to the order, or straight on to the other face. */
function whereNext(desk: FlatnessDesk, componentId: number, after: string): string {
  const order = `/work-orders/${desk.workOrder.number}`
  const other = desk.faces.find((one) => one.id !== componentId)
  if (after !== 'other-face' || other === undefined) return `${order}?recorded=flatness`
  return `${order}/flatness/new?face=${other.id}&recorded=flatness`
}

/** The lamp is one of the table: parsing saw to it. */
function withSpread(
  desk: FlatnessDesk,
  entered: FlatnessBudgetInput,
  spread: ReaderSpread | null,
  read: Pick<NewFlatnessReading, 'lampInstrumentId' | 'pattern' | 'viewingAngleDeg'>,
): FlatnessBudgetInput {
  const lamp = desk.instruments.find((one) => one.id === read.lampInstrumentId)
  const lampId = lampIds.find((id) => id === lamp?.lampId)
  return lampId === undefined ? entered : budgetWithSpread(entered, spread, { ...read, lampId })
}
