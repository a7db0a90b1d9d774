import type { InstrumentUse } from './instrument.ts'
import type { MeasuredValue } from './measured-value.ts'

/** The instrument that a value was read with, and the second one beside it where there was one. */
export function instrumentsOfValue({
  instrument,
  secondInstrument,
}: Pick<MeasuredValue, 'instrument' | 'secondInstrument'>): readonly InstrumentUse[] {
  return secondInstrument === null ? [instrument] : [instrument, secondInstrument]
}
