import { StaticTestPreview } from '../../../views/static-tests/preview.tsx'
import { staticTestsWords } from '../../../views/words/en/static-tests.ts'
import { carriedStaticTestBudget } from '../../domain/carried-static-test-budget.ts'
import { completeStaticTest } from '../../domain/complete-static-test.ts'
import { parseStaticTestForm } from '../../domain/parse-static-test-form.ts'
import { noStaticTestBudgetInput } from '../../domain/static-test.ts'
import { addStaticTest } from '../../store/add-static-test.ts'
import { listStaticTests } from '../../store/list-static-tests.ts'
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
import { openStaticTestDesk } from './desk.ts'
import { sendStaticTestForm } from './form-page.tsx'
import { freshValues, valuesOfInput, valuesOfTest } from './form-values.ts'

export async function newStaticTest(c: AppContext): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const desk = openStaticTestDesk(c)
  requireOpenOrder(store, desk.workOrder.id)
  const quarantine = sendQuarantine(c, desk.workOrder, staticTestsWords.title)
  if (quarantine !== null) return quarantine
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
  const input = await readForm(c)
  const tests = listStaticTests(c.var.shop.store, desk.workOrder.id)
  const replaced = tests.find((one) => String(one.id) === typedText(input.replacesId))
  const answer = answerOf(input, desk, replaced)
  return sendFragment(c, <StaticTestPreview answer={answer} />)
}

export async function createStaticTest(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openStaticTestDesk(c)
  const input = await readForm(c)
  const quarantine = sendQuarantine(c, desk.workOrder, staticTestsWords.title)
  if (quarantine !== null) return quarantine
  const own = ownFields(input)
  const parsed = parseStaticTestForm(own, desk)
  const tests = listStaticTests(store, desk.workOrder.id)
  if (!parsed.ok) {
    return sendStaticTestForm(c, desk, {
      values: valuesOfInput(own),
      formKey: typedText(input.formKey),
      faults: parsed.faults,
      replaced: replacedRecord(tests, typedText(own.replacesId)),
    })
  }
  return recordOnce(c, input, () => {
    const entered = parsed.value.budgetInput ?? noStaticTestBudgetInput
    const replaced = tests.find((one) => one.id === parsed.value.replacesId)
    const budgetInput = carriedStaticTestBudget(entered, replaced)
    const test = { ...parsed.value, budgetInput, workOrderId: desk.workOrder.id }
    addStaticTest(store, completeStaticTest(test, desk), actor(c))
    return `/work-orders/${desk.workOrder.number}?recorded=static-test`
  })
}
