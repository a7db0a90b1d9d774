import { UseExceptionFormPage } from '../../../views/use-exception-form-page.tsx'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import { type InstrumentStanding, instrumentStandings } from '../../domain/instrument-standing.ts'
import { useExceptionFields } from '../../domain/parse-use-exception.ts'
import type { WorkOrder } from '../../domain/work-order.ts'
import { listInstruments } from '../../store/list-instruments.ts'
import { requireSeal } from '../../store/require-seal.ts'
import type { AppContext } from '../context.ts'
import { newFormKey } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { today } from '../today.ts'
import { typedFields } from '../typed-fields.ts'
import { typedText } from '../typed-text.ts'

/** The form for an order, fresh for the instrument in the address, or with what is wrong in it. */
export function sendExceptionForm(
  c: AppContext,
  order: WorkOrder,
  refused?: { readonly input: Input; readonly faults: readonly Fault[] },
): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const standings = instrumentStandings(listInstruments(store), today(c))
  const input = refused?.input ?? asked(standings, c.req.query('instrument'))
  const page = (
    <UseExceptionFormPage
      frame={frameOf(c)}
      form={{
        orderNumber: order.number,
        sealSerial: requireSeal(store, order.sealId).serial,
        standings,
        typed: typedFields(input, useExceptionFields),
        faults: refused?.faults ?? [],
        formKey: typedText(input.formKey) || newFormKey(randomBytes),
      }}
    />
  )
  return sendPage(c, page, refused === undefined ? 200 : 422)
}

/** The instrument of the address, with what stands against it today. */
function asked(standings: readonly InstrumentStanding[], id: string | undefined): Input {
  const found = standings.find((one) => String(one.instrument.id) === id)
  if (found === undefined) return {}
  const { status } = found.use
  const fault = status === 'in-calibration' ? 'out-of-range' : status
  return { instrumentId: String(found.instrument.id), fault }
}
