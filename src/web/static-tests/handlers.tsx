import { StaticTestPreview } from '../../../views/static-tests/preview.tsx'
import { completeStaticTest } from '../../domain/complete-static-test.ts'
import { parseStaticTestForm } from '../../domain/parse-static-test-form.ts'
import { addStaticTest } from '../../store/add-static-test.ts'
import { listStaticTests } from '../../store/list-static-tests.ts'
import { requireOpenOrder } from '../../store/require-open-order.ts'
import type { AppContext } from '../context.ts'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { newFormKey, recordOnce } from '../record-once.ts'
import { replacedRecord } from '../replaced-record.ts'
import { sendFragment } from '../send-page.ts'
import { typedText } from '../typed-text.ts'
import { actor } from '../viewer.ts'
import { answerOf } from './answer-of.ts'
import { openStaticTestDesk } from './desk.ts'
import { sendStaticTestForm } from './form-page.tsx'
import { freshValues, valuesOfInput, valuesOfTest } from './form-values.ts'

export function newStaticTest(c: AppContext): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const desk = openStaticTestDesk(c)
  requireOpenOrder(store, desk.workOrder.id)
  const replaced = replacedRecord(
    listStaticTests(store, desk.workOrder.id),
    c.req.query('replaces'),
  )
  return sendStaticTestForm(c, desk, {
    values: replaced === undefined ? freshValues(c, desk) : valuesOfTest(replaced),
    formKey: newFormKey(randomBytes),
    faults: [],
    replaced,
  })
}

/** Recomputes the answer while the form is being filled in; records nothing. */
export async function previewStaticTest(c: AppContext): Promise<Response> {
  const desk = openStaticTestDesk(c)
  const answer = answerOf(await readForm(c), desk)
  return sendFragment(c, <StaticTestPreview answer={answer} />)
}

export async function createStaticTest(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openStaticTestDesk(c)
  const input = await readForm(c)
  const own = ownFields(input)
  const parsed = parseStaticTestForm(own, desk)
  if (!parsed.ok) {
    const tests = listStaticTests(store, desk.workOrder.id)
    return sendStaticTestForm(c, desk, {
      values: valuesOfInput(own),
      formKey: typedText(input.formKey),
      faults: parsed.faults,
      replaced: replacedRecord(tests, typedText(own.replacesId)),
    })
  }
  return recordOnce(c, input, () => {
    const test = completeStaticTest({ ...parsed.value, workOrderId: desk.workOrder.id }, desk)
    addStaticTest(store, test, actor(c))
    return `/work-orders/${desk.workOrder.number}?recorded=static-test`
  })
}
