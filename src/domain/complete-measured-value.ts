import { computeMeasuredValue } from './compute-measured-value.ts'
import { expansionOf } from './expansion-of.ts'
import { measuredAccuracy } from './measured-accuracy.ts'
import type { MeasuredValue, NewMeasuredValue } from './measured-value.ts'
import type { MeasuredValueContext } from './parse-measured-value.ts'
import { raisedAccuracy } from './raised-accuracy.ts'
import { useOf } from './use-of.ts'
import { valueReadings } from './value-readings.ts'

/** A value with all that is computed, before the store gives it an id, a name and a time. */
export type CompleteMeasuredValue = Omit<
  MeasuredValue,
  'id' | 'recordedById' | 'recordedByName' | 'recordedAt' | 'replacedById'
>

/**
 * Adds to a parsed value its figure and the instrument as it stood on the day.
 * @param statedUncertaintyUm of one reading, standard; counts where the papers of the instrument say less
 * @throws RangeError where the value was not parsed in this context
 */
export function completeMeasuredValue(
  measured: NewMeasuredValue,
  context: MeasuredValueContext,
  statedUncertaintyUm = 0,
): CompleteMeasuredValue {
  const { components, instruments, exceptions, today } = context
  const instrument = instruments.find((one) => one.id === measured.instrumentId)
  if (instrument === undefined) {
    throw new RangeError(
      `completeMeasuredValue requires an instrument of its context, got id ${measured.instrumentId}`,
    )
  }
  const source = { ...measured, expansionPerK: expansionOf(components, measured.componentId) }
  const ofPapers = measuredAccuracy(instrument, today, measured)
  return {
    ...measured,
    ...computeMeasuredValue(source, raisedAccuracy(ofPapers, statedUncertaintyUm)),
    instrument: useOf(instrument, {
      day: today,
      recordedOn: today,
      exceptions,
      readings: valueReadings(measured.readings),
    }),
    secondInstrument: null,
  }
}
