import { TouchedPage } from '../../../views/touched-page.tsx'
import { AppError } from '../../domain/app-error.ts'
import { type DoubtWindow, doubtWindow } from '../../domain/doubt-window.ts'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import type { Calibration, Instrument } from '../../domain/instrument.ts'
import { parseDoubtAnswer } from '../../domain/parse-doubt-answer.ts'
import { answerDoubts } from '../../store/answer-doubts.ts'
import { listTouched } from '../../store/list-touched.ts'
import { newestDoubtAnswerId } from '../../store/newest-doubt-answer-id.ts'
import { requireInstrument } from '../../store/require-instrument.ts'
import type { AppContext } from '../context.ts'
import { faultOfConflict } from '../fault-of-conflict.ts'
import { idOf } from '../id-of.ts'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { newFormKey, recordOnce } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { typedFields } from '../typed-fields.ts'
import { typedText } from '../typed-text.ts'
import { actor, viewer } from '../viewer.ts'

type InDoubt = {
  readonly instrument: Instrument
  readonly found: Calibration
  readonly window: DoubtWindow
}
type Refused = { readonly input: Input; readonly faults: readonly Fault[] }

/** What a calibration put in doubt; without one named, the newest that found or left it beyond. */
export function showTouched(c: AppContext): Promise<Response> {
  return sendTouched(c, inDoubt(c, c.req.query('calibration')))
}

/** An inspector's answer about the ticked records. */
export async function answerDoubt(c: AppContext): Promise<Response> {
  const input = await readForm(c)
  const doubt = inDoubt(c, typedText(input.calibration))
  const parsed = parseDoubtAnswer(ownFields(input))
  if (!parsed.ok) return sendTouched(c, doubt, { input, faults: parsed.faults })
  const { instrument, found } = doubt
  const answer = faultOfConflict({ 'answered-meanwhile': answeredMeanwhile }, () =>
    recordOnce(c, input, () => {
      const about = { instrumentId: instrument.id, calibrationId: found.id, by: viewer(c) }
      answerDoubts(c.var.shop.store, { ...parsed.value, ...about }, actor(c))
      return `/instruments/${instrument.id}/touched?calibration=${found.id}&recorded`
    }),
  )
  return answer instanceof Response ? answer : sendTouched(c, doubt, { input, faults: [answer] })
}

const answeredMeanwhile: Fault = { field: 'records', kind: 'answered-meanwhile' }

function inDoubt(c: AppContext, calibration: string | undefined): InDoubt {
  const instrument = requireInstrument(c.var.shop.store, idOf(c.req.param('id'), 'no-instrument'))
  const { calibrations } = instrument
  const found =
    calibration === undefined || calibration === ''
      ? calibrations.findLast((one) => doubtWindow(calibrations, one) !== null)
      : calibrations.find((one) => one.id === idOf(calibration, 'no-doubt'))
  const window = found === undefined ? null : doubtWindow(calibrations, found)
  if (found === undefined || window === null) throw new AppError('not-found', 'no-doubt')
  return { instrument, found, window }
}

function sendTouched(c: AppContext, doubt: InDoubt, refused?: Refused): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const input = refused?.input ?? {}
  const form = {
    formKey: typedText(input.formKey) || newFormKey(randomBytes),
    seenAnswerId: newestDoubtAnswerId(store, doubt.found.id),
    ticked: [input.records ?? []].flat().map((one) => typedText(one)),
    typed: typedFields(input, ['answer', 'reason']),
    faults: refused?.faults ?? [],
  }
  const page = (
    <TouchedPage
      frame={frameOf(c)}
      {...doubt}
      touched={listTouched(store, doubt)}
      isRecorded={c.req.query('recorded') !== undefined}
      form={viewer(c).role === 'inspector' ? form : null}
    />
  )
  return sendPage(c, page, refused === undefined ? 200 : 422)
}
