import { AssemblyFormPage } from '../../../views/strip/assembly-form.tsx'
import { type StripAnswerProps, StripPreview } from '../../../views/strip/strip-answer.tsx'
import { assemblyWords } from '../../../views/words/en/assembly.ts'
import type { Assembly } from '../../domain/assembly.ts'
import { assemblyAsPrinted } from '../../domain/certified-assembly.ts'
import { completeAssembly } from '../../domain/complete-assembly.ts'
import { currentOnly } from '../../domain/current-only.ts'
import type { FaultKind } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import { parseAssembly } from '../../domain/parse-assembly.ts'
import { addAssembly } from '../../store/add-assembly.ts'
import { lastAssemblyOfSeal } from '../../store/last-assembly-of-seal.ts'
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
import { notRecorded } from './as-recorded.ts'
import { designOf, valuesOfAssembly } from './assembly-values.ts'
import { type BenchDrawn, benchForm } from './bench-form.ts'
import { openStripDesk, type StripDesk } from './desk.ts'
import { dropEmptyRows, typedValues } from './typed-rows.ts'

export async function newAssembly(c: AppContext): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const desk = openStripDesk(c)
  requireOpenOrder(store, desk.evidence.workOrder.id)
  const quarantine = sendQuarantine(c, desk.evidence.workOrder, assemblyWords.title)
  if (quarantine !== null) return quarantine
  const replaced = replacedRecord(desk.evidence.assemblies, c.req.query('replaces'))
  const last =
    replaced === undefined ? lastAssemblyOfSeal(store, desk.evidence.workOrder) : undefined
  const drawn = {
    values: replaced === undefined ? designOf(last) : valuesOfAssembly(replaced),
    formKey: newFormKey(randomBytes),
    faults: [],
    replaced,
  }
  return sendForm(c, desk, drawn, last)
}

/** What the record would say while its form is being filled in; records nothing. */
export async function previewAssembly(c: AppContext): Promise<Response> {
  const desk = openStripDesk(c)
  const own = withoutEmpty(ownFields(await readForm(c)))
  return sendFragment(c, <StripPreview answer={answerOf(own, desk)} />)
}

export async function createAssembly(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openStripDesk(c)
  const { workOrder, assemblies } = desk.evidence
  const input = await readForm(c)
  const own = withoutEmpty(ownFields(input))
  const parsed = parseAssembly(own, desk.evidence.springChecks)
  if (!parsed.ok) {
    return sendForm(c, desk, {
      values: typedValues(own),
      formKey: typedText(input.formKey),
      faults: parsed.faults,
      replaced: replacedRecord(assemblies, typedText(own.replacesId)),
    })
  }
  return recordOnce(c, input, () => {
    addAssembly(store, { ...parsed.value, workOrderId: workOrder.id }, actor(c))
    return `/work-orders/${workOrder.number}?recorded=assembly`
  })
}

const stillEmpty: readonly FaultKind[] = ['empty', 'reason-needed', 'tolerance-needed']

function answerOf(input: Input, desk: StripDesk): StripAnswerProps {
  const parsed = parseAssembly(input, desk.evidence.springChecks)
  if (!parsed.ok) {
    // What is still empty is no mistake yet.
    const faults = parsed.faults.filter((one) => !stillEmpty.includes(one.kind))
    return faults.length > 0
      ? { kind: 'faulty', faults, own: assemblyWords.faults }
      : { kind: 'ask', text: assemblyWords.ask }
  }
  const { evidence } = desk
  const fresh = { ...parsed.value, workOrderId: evidence.workOrder.id }
  const assembly = { ...completeAssembly(fresh, evidence.springChecks), ...notRecorded }
  return { kind: 'assembly', assembly: assemblyAsPrinted(assembly, evidence) }
}

function sendForm(
  c: AppContext,
  desk: StripDesk,
  drawn: BenchDrawn<Assembly>,
  taken?: Assembly,
): Promise<Response> {
  const { faults, replaced } = drawn
  const form = benchForm(desk, drawn, { place: 'assembly', own: assemblyWords.faults })
  const page = (
    <AssemblyFormPage
      frame={frameOf(c)}
      form={form}
      taken={taken ?? null}
      parts={currentOnly(desk.evidence.partLines)}
      answer={
        replaced === undefined
          ? { kind: 'ask', text: assemblyWords.ask }
          : { kind: 'assembly', assembly: assemblyAsPrinted(replaced, desk.evidence) }
      }
    />
  )
  return sendPage(c, page, faults.length > 0 ? 422 : 200)
}

function withoutEmpty(input: Input): Input {
  return dropEmptyRows(input, 'setScrews')
}
