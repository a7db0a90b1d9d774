import { type StripAnswerProps, StripPreview } from '../../../views/strip/strip-answer.tsx'
import { WearTrackFormPage } from '../../../views/strip/wear-track-form.tsx'
import { wearTrackWords } from '../../../views/words/en/strip-records.ts'
import { certifiedTrack } from '../../domain/certified-tracks.ts'
import { completeWearTrack } from '../../domain/complete-wear-track.ts'
import type { Input } from '../../domain/fields.ts'
import { orderAlignment } from '../../domain/order-alignment.ts'
import { parseWearTrack } from '../../domain/parse-wear-track.ts'
import { faceKinds } from '../../domain/seal.ts'
import type { WearTrack } from '../../domain/wear-track.ts'
import { addWearTrack } from '../../store/add-wear-track.ts'
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

export async function newWearTrack(c: AppContext): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const desk = openStripDesk(c)
  requireOpenOrder(store, desk.evidence.workOrder.id)
  const quarantine = sendQuarantine(c, desk.evidence.workOrder, wearTrackWords.title)
  if (quarantine !== null) return quarantine
  const replaced = replacedRecord(desk.evidence.wearTracks, c.req.query('replaces'))
  const face = c.req.query('face') ?? ''
  return sendForm(c, desk, {
    values: replaced === undefined ? { componentId: face } : valuesOfRecord(replaced),
    formKey: newFormKey(randomBytes),
    faults: [],
    replaced,
  })
}

/** What the record would say while its form is being filled in; records nothing. */
export async function previewWearTrack(c: AppContext): Promise<Response> {
  const desk = openStripDesk(c)
  const own = withoutEmpty(ownFields(await readForm(c)))
  return sendFragment(c, <StripPreview answer={answerOf(own, desk)} />)
}

export async function createWearTrack(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openStripDesk(c)
  const { workOrder, wearTracks } = desk.evidence
  const input = await readForm(c)
  const own = withoutEmpty(ownFields(input))
  const parsed = parseWearTrack(own, desk)
  if (!parsed.ok) {
    return sendForm(c, desk, {
      values: typedValues(own),
      formKey: typedText(input.formKey),
      faults: parsed.faults,
      replaced: replacedRecord(wearTracks, typedText(own.replacesId)),
    })
  }
  return recordOnce(c, input, () => {
    const fresh = completeWearTrack({ ...parsed.value, workOrderId: workOrder.id }, desk)
    addWearTrack(store, fresh, actor(c))
    return `/work-orders/${workOrder.number}?recorded=wear-track`
  })
}

function answerOf(input: Input, desk: StripDesk): StripAnswerProps {
  const parsed = parseWearTrack(input, desk)
  if (!parsed.ok) {
    // What is still empty is no mistake yet.
    const faults = parsed.faults.filter((one) => !['empty', 'reason-needed'].includes(one.kind))
    return faults.length > 0
      ? { kind: 'faulty', faults, own: wearTrackWords.faults }
      : { kind: 'ask', text: wearTrackWords.ask }
  }
  const { evidence } = desk
  const workOrderId = evidence.workOrder.id
  const track = completeWearTrack({ ...parsed.value, workOrderId }, desk)
  const { found } = orderAlignment(evidence, [])
  return { kind: 'track', track: certifiedTrack({ ...track, ...notRecorded }, evidence, found) }
}

function sendForm(c: AppContext, desk: StripDesk, drawn: BenchDrawn<WearTrack>): Promise<Response> {
  const { faults, replaced } = drawn
  const form = benchForm(desk, drawn, { place: 'wear-tracks', own: wearTrackWords.faults })
  const page = (
    <WearTrackFormPage
      frame={frameOf(c)}
      form={form}
      faces={desk.faces.flatMap(({ id, kind, material }) => {
        const face = faceKinds.find((one) => one === kind)
        return face === undefined ? [] : [{ id, kind: face, material }]
      })}
      choice={choiceOf(desk)}
      answer={
        replaced === undefined
          ? { kind: 'ask', text: wearTrackWords.ask }
          : { kind: 'track', track: certifiedTrack(replaced, desk.evidence, []) }
      }
    />
  )
  return sendPage(c, page, faults.length > 0 ? 422 : 200)
}

/** The form filled with what an earlier record says, to be corrected. */
function valuesOfRecord(track: WearTrack): Readonly<Record<string, string>> {
  return {
    ...typedValues({ trackWidths: track.trackWidths.map(({ typed }) => ({ widthMm: typed })) }),
    componentId: String(track.componentId),
    noseWidthMm: track.noseWidth.typed,
    offsetMm: track.offset?.typed ?? '',
    offsetHour: numberValue(track.offsetHour),
    instrumentId: numberValue(track.instrumentId),
    note: track.note,
  }
}

function withoutEmpty(input: Input): Input {
  return dropEmptyRows(input, 'trackWidths')
}
