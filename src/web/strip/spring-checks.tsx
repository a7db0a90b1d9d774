import { SpringCheckFormPage } from '../../../views/strip/spring-check-form.tsx'
import { type StripAnswerProps, StripPreview } from '../../../views/strip/strip-answer.tsx'
import { springCheckWords } from '../../../views/words/en/strip-records.ts'
import { certifiedSpring } from '../../domain/certified-springs.ts'
import { completeSpringCheck } from '../../domain/complete-spring-check.ts'
import type { Input } from '../../domain/fields.ts'
import { parseSpringCheck } from '../../domain/parse-spring-check.ts'
import type { SpringCheck } from '../../domain/spring-check.ts'
import { addSpringCheck } from '../../store/add-spring-check.ts'
import { requireOpenOrder } from '../../store/require-open-order.ts'
import type { AppContext } from '../context.ts'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { newFormKey, recordOnce } from '../record-once.ts'
import { replacedRecord } from '../replaced-record.ts'
import { frameOf, sendFragment, sendPage } from '../send-page.ts'
import { sendQuarantine } from '../send-quarantine.tsx'
import { typedText } from '../typed-text.ts'
import { actor } from '../viewer.ts'
import { notRecorded, numberValue } from './as-recorded.ts'
import { type BenchDrawn, benchForm, choiceOf } from './bench-form.ts'
import { openStripDesk, type StripDesk } from './desk.ts'
import { dropEmptyRows, typedValues } from './typed-rows.ts'

export async function newSpringCheck(c: AppContext): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const desk = openStripDesk(c)
  requireOpenOrder(store, desk.evidence.workOrder.id)
  const quarantine = sendQuarantine(c, desk.evidence.workOrder, springCheckWords.title)
  if (quarantine !== null) return quarantine
  const replaced = replacedRecord(desk.evidence.springChecks, c.req.query('replaces'))
  return sendForm(c, desk, {
    values: replaced === undefined ? { condition: 'as-found' } : valuesOfRecord(replaced),
    formKey: newFormKey(randomBytes),
    faults: [],
    replaced,
  })
}

/** What the record would say while its form is being filled in; records nothing. */
export async function previewSpringCheck(c: AppContext): Promise<Response> {
  const desk = openStripDesk(c)
  const own = withoutEmpty(ownFields(await readForm(c)))
  return sendFragment(c, <StripPreview answer={answerOf(own, desk)} />)
}

export async function createSpringCheck(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openStripDesk(c)
  const { workOrder, springChecks } = desk.evidence
  const input = await readForm(c)
  const own = withoutEmpty(ownFields(input))
  const parsed = parseSpringCheck(own, desk)
  if (!parsed.ok) {
    return sendForm(c, desk, {
      values: typedValues(own),
      formKey: typedText(input.formKey),
      faults: parsed.faults,
      replaced: replacedRecord(springChecks, typedText(own.replacesId)),
    })
  }
  return recordOnce(c, input, () => {
    const fresh = completeSpringCheck({ ...parsed.value, workOrderId: workOrder.id }, desk)
    addSpringCheck(store, fresh, actor(c))
    return `/work-orders/${workOrder.number}?recorded=spring-check`
  })
}

function answerOf(input: Input, desk: StripDesk): StripAnswerProps {
  const parsed = parseSpringCheck(input, desk)
  if (!parsed.ok) {
    // What is still empty is no mistake yet.
    const faults = parsed.faults.filter((one) => !['empty', 'reason-needed'].includes(one.kind))
    return faults.length > 0
      ? { kind: 'faulty', faults, own: springCheckWords.faults }
      : { kind: 'ask', text: springCheckWords.ask }
  }
  const { springChecks, workOrder } = desk.evidence
  const check = completeSpringCheck({ ...parsed.value, workOrderId: workOrder.id }, desk)
  return { kind: 'spring', spring: certifiedSpring({ ...check, ...notRecorded }, springChecks) }
}

function sendForm(
  c: AppContext,
  desk: StripDesk,
  drawn: BenchDrawn<SpringCheck>,
): Promise<Response> {
  const { faults, replaced } = drawn
  const form = benchForm(desk, drawn, { place: 'spring-checks', own: springCheckWords.faults })
  const page = (
    <SpringCheckFormPage
      frame={frameOf(c)}
      form={form}
      choice={choiceOf(desk)}
      answer={
        replaced === undefined
          ? { kind: 'ask', text: springCheckWords.ask }
          : {
              kind: 'spring',
              spring: certifiedSpring(replaced, desk.evidence.springChecks),
            }
      }
    />
  )
  return sendPage(c, page, faults.length > 0 ? 422 : 200)
}

/** The form filled with what an earlier record says, to be corrected. */
function valuesOfRecord(check: SpringCheck): Readonly<Record<string, string>> {
  const loads = check.loads.map(({ length, load }) => ({
    lengthMm: length.typed,
    loadN: load.typed,
  }))
  return {
    ...typedValues({ loads }),
    condition: check.condition,
    springsCount: String(check.springsCount),
    freeLengthMm: check.freeLength.typed,
    newLengthMm: check.newLength?.typed ?? '',
    rateNPerMm: numberValue(check.statedRateNPerMm),
    workingLengthMm: check.workingLength.typed,
    solidLengthMm: check.solidLength?.typed ?? '',
    instrumentId: numberValue(check.instrumentId),
    note: check.note,
  }
}

function withoutEmpty(input: Input): Input {
  return dropEmptyRows(input, 'loads')
}
