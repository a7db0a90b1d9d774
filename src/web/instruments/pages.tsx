import { InstrumentPage } from '../../../views/instrument-page.tsx'
import { InstrumentsPage } from '../../../views/instruments-page.tsx'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import { type Instrument, instrumentKinds } from '../../domain/instrument.ts'
import { instrumentStanding, instrumentStandings } from '../../domain/instrument-standing.ts'
import { calibrationFields } from '../../domain/parse-calibration.ts'
import { instrumentFields } from '../../domain/parse-instrument.ts'
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

/** The list as its address asks for it; a kind that there is not shows every one. */
export function sendInstruments(c: AppContext, refused?: Refused): Promise<Response> {
  const { store } = c.var.shop
  const kind = instrumentKinds.find((one) => one === c.req.query('kind'))
  const found = listInstruments(store, kind === undefined ? {} : { kind })
  const page = (
    <InstrumentsPage
      frame={frameOf(c)}
      standings={instrumentStandings(found, today(c))}
      kind={kind ?? ''}
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
  const page = (
    <InstrumentPage
      frame={frameOf(c)}
      standing={instrumentStanding(instrument, today(c))}
      withdrawalReason={withdrawalReason(c.var.shop.store, instrument.number)}
      isRecorded={c.req.query('recorded') !== undefined}
      form={mayRecord(c) ? formOf(c, [...calibrationFields, 'reason'], refused) : null}
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
  // The page adds its own ending where two forms stand on it.
  const formKey = typedText(input.formKey).replace(/-(calibration|withdrawal)$/, '')
  return {
    typed: typedFields(input, names),
    faults: refused?.faults ?? [],
    formKey: formKey === '' ? newFormKey(c.var.shop.randomBytes) : formKey,
  }
}
