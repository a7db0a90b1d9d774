import { InstrumentPage } from '../../../views/instrument-page.tsx'
import { numbersText } from '../../../views/instruments/numbers-text.ts'
import { InstrumentsPage } from '../../../views/instruments-page.tsx'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import { type Instrument, instrumentKinds } from '../../domain/instrument.ts'
import { amendedNames } from '../../domain/instrument-amendment.ts'
import {
  instrumentStanding,
  instrumentStandings,
  instrumentStates,
} from '../../domain/instrument-standing.ts'
import { calibrationFields } from '../../domain/parse-calibration.ts'
import { instrumentFields } from '../../domain/parse-instrument.ts'
import { currentHolders } from '../../store/current-holders.ts'
import { listInstrumentAmendments } from '../../store/list-instrument-amendments.ts'
import { listInstrumentFiles } from '../../store/list-instrument-files.ts'
import { listInstrumentHolders } from '../../store/list-instrument-holders.ts'
import { listInstruments } from '../../store/list-instruments.ts'
import { withdrawalReason } from '../../store/withdrawal-reason.ts'
import type { AppContext } from '../context.ts'
import { newFormKey } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { today } from '../today.ts'
import { typedFields } from '../typed-fields.ts'
import { typedText } from '../typed-text.ts'
import { viewer } from '../viewer.ts'

type Refused = { readonly input: Input; readonly faults: readonly Fault[] }

/** The list as its address asks for it; a kind or state that there is not shows every one. */
export function sendInstruments(c: AppContext, refused?: Refused): Promise<Response> {
  const { store } = c.var.shop
  const page = (
    <InstrumentsPage
      frame={frameOf(c)}
      standings={instrumentStandings(listInstruments(store), today(c))}
      holders={currentHolders(store)}
      kind={instrumentKinds.find((one) => one === c.req.query('kind')) ?? ''}
      state={instrumentStates.find((one) => one === c.req.query('state')) ?? ''}
      form={mayRecord(c) ? formOf(c, instrumentFields, refused) : null}
    />
  )
  return sendPage(c, page, refused === undefined ? 200 : 422)
}

/** One instrument as it stands today; with `refused` as the answer to a form of its page. */
export function sendInstrument(
  c: AppContext,
  instrument: Instrument,
  refused?: Refused,
): Promise<Response> {
  const { store } = c.var.shop
  const names = [...calibrationFields, 'reason', 'holder', 'calibrationId', 'amendReason'] as const
  const isAmending = refused !== undefined && 'amendReason' in refused.input
  const page = (
    <InstrumentPage
      frame={frameOf(c)}
      standing={instrumentStanding(instrument, today(c))}
      withdrawalReason={withdrawalReason(store, instrument.number)}
      holders={listInstrumentHolders(store, instrument.id)}
      amendments={listInstrumentAmendments(store, instrument.id)}
      numbersTyped={isAmending ? typedFields(refused.input, amendedNames) : numbersText(instrument)}
      files={listInstrumentFiles(store, instrument.id)}
      isRecorded={c.req.query('recorded') !== undefined}
      mayCalibrate={mayRecord(c)}
      form={formOf(c, names, refused)}
    />
  )
  return sendPage(c, page, refused === undefined ? 200 : 422)
}

/** Who may by the route table; to others the forms are not shown. */
function mayRecord(c: AppContext): boolean {
  return ['inspector', 'manager'].includes(viewer(c).role)
}

function formOf<Name extends string>(
  c: AppContext,
  names: readonly Name[],
  refused: Refused | undefined,
) {
  const input = refused?.input ?? {}
  // The page adds an ending of its own where several forms stand on it.
  const formKey = typedText(input.formKey).replace(
    /-(calibration|withdrawal|holder|file|numbers)$/,
    '',
  )
  return {
    typed: typedFields(input, names),
    faults: refused?.faults ?? [],
    formKey: formKey === '' ? newFormKey(c.var.shop.randomBytes) : formKey,
  }
}
