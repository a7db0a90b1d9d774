import type { Fault } from '../../src/domain/fault.ts'
import type { Instrument } from '../../src/domain/instrument.ts'
import type { calibrationFields } from '../../src/domain/parse-calibration.ts'

/** Every field of the forms on the page of an instrument; none of them share a name. */
export type InstrumentTypedThere = Readonly<
  Record<
    (typeof calibrationFields)[number] | 'reason' | 'holder' | 'calibrationId' | 'amendReason',
    string
  >
>

/** What the forms on the page of an instrument share. */
export type InstrumentForms = {
  readonly instrument: Instrument
  readonly formKey: string
  readonly typed: InstrumentTypedThere
  readonly faults: readonly Fault[]
}
