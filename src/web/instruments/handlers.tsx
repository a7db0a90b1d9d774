import type { Fault } from '../../domain/fault.ts'
import { parseCalibration } from '../../domain/parse-calibration.ts'
import { parseHolder } from '../../domain/parse-holder.ts'
import { parseInstrument } from '../../domain/parse-instrument.ts'
import { parseInstrumentAmendment } from '../../domain/parse-instrument-amendment.ts'
import { parseWithdrawal } from '../../domain/parse-withdrawal.ts'
import { addCalibration as storeCalibration } from '../../store/add-calibration.ts'
import { addInstrument } from '../../store/add-instrument.ts'
import { addInstrumentAmendment } from '../../store/add-instrument-amendment.ts'
import { setInstrumentHolder as storeHolder } from '../../store/set-instrument-holder.ts'
import { withdrawInstrument as storeWithdrawal } from '../../store/withdraw-instrument.ts'
import type { AppContext } from '../context.ts'
import { faultOfConflict } from '../fault-of-conflict.ts'
import { ownFields } from '../own-fields.ts'
import { readForm } from '../read-form.ts'
import { recordOnce } from '../record-once.ts'
import { today } from '../today.ts'
import { typedText } from '../typed-text.ts'
import { actor } from '../viewer.ts'
import { instrumentOf } from './instrument-of.ts'
import { sendInstrument, sendInstruments } from './pages.tsx'

export function listInstruments(c: AppContext): Promise<Response> {
  return sendInstruments(c)
}

const numberTaken: Fault = { field: 'number', kind: 'taken' }

export async function createInstrument(c: AppContext): Promise<Response> {
  const input = await readForm(c)
  const parsed = parseInstrument(ownFields(input))
  if (!parsed.ok) return sendInstruments(c, { input, faults: parsed.faults })
  const answer = faultOfConflict({ 'instrument-number-taken': numberTaken }, () =>
    recordOnce(c, input, () => {
      const { id } = addInstrument(c.var.shop.store, parsed.value, actor(c))
      return `/instruments/${id}?recorded`
    }),
  )
  return answer instanceof Response ? answer : sendInstruments(c, { input, faults: [answer] })
}

export function showInstrument(c: AppContext): Promise<Response> {
  return sendInstrument(c, instrumentOf(c))
}

export async function addCalibration(c: AppContext): Promise<Response> {
  const input = await readForm(c)
  // Fetched after the wait: what is held against its numbers is recorded in the same breath.
  const instrument = instrumentOf(c)
  const { seenUnit, ...own } = ownFields(input)
  const context = { today: today(c), instrument, seenUnit: typedText(seenUnit) }
  const parsed = parseCalibration(own, context)
  if (!parsed.ok) return sendInstrument(c, instrument, { input, faults: parsed.faults })
  return recordOnce(c, input, () => {
    const fresh = { ...parsed.value, instrumentId: instrument.id }
    storeCalibration(c.var.shop.store, fresh, actor(c))
    return `/instruments/${instrument.id}?recorded`
  })
}

const amendConflicts: Readonly<Record<string, Fault>> = {
  'instrument-amended': { field: 'amendReason', kind: 'amended-meanwhile' },
  'instrument-not-changed': { field: 'amendReason', kind: 'nothing-changed' },
}

/** What is known of it in numbers from now on. */
export async function amendInstrument(c: AppContext): Promise<Response> {
  const input = await readForm(c)
  const instrument = instrumentOf(c)
  const { store } = c.var.shop
  const { seenAmendment, ...own } = ownFields(input)
  const parsed = parseInstrumentAmendment(own, instrument)
  if (!parsed.ok) return sendInstrument(c, instrument, { input, faults: parsed.faults })
  const fresh = { ...parsed.value, instrumentId: instrument.id, seenId: Number(seenAmendment) }
  const answer = faultOfConflict(amendConflicts, () =>
    recordOnce(c, input, () => {
      addInstrumentAmendment(store, fresh, actor(c))
      return `/instruments/${instrument.id}?recorded`
    }),
  )
  if (answer instanceof Response) return answer
  return sendInstrument(c, instrument, { input, faults: [answer] })
}

/** Takes it out of use from today. */
export async function withdrawInstrument(c: AppContext): Promise<Response> {
  const instrument = instrumentOf(c)
  const input = await readForm(c)
  const parsed = parseWithdrawal(ownFields(input))
  if (!parsed.ok) return sendInstrument(c, instrument, { input, faults: parsed.faults })
  return recordOnce(c, input, () => {
    const fresh = { instrumentId: instrument.id, on: today(c), reason: parsed.value.reason }
    storeWithdrawal(c.var.shop.store, fresh, actor(c))
    return `/instruments/${instrument.id}?recorded`
  })
}

/** Who or which place holds it from now on. */
export async function setInstrumentHolder(c: AppContext): Promise<Response> {
  const instrument = instrumentOf(c)
  const input = await readForm(c)
  const parsed = parseHolder(ownFields(input))
  if (!parsed.ok) return sendInstrument(c, instrument, { input, faults: parsed.faults })
  return recordOnce(c, input, () => {
    const fresh = { instrumentId: instrument.id, holder: parsed.value.holder }
    storeHolder(c.var.shop.store, fresh, actor(c))
    return `/instruments/${instrument.id}?recorded#holders`
  })
}
