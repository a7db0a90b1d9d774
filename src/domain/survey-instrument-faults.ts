import { checkLabel } from './check-label.ts'
import type { DialSurvey } from './dial-survey.ts'
import type { Fault } from './fault.ts'
import { openFields } from './fields.ts'
import type { MeasuredValueContext } from './parse-measured-value.ts'

/**
 * What stands against the indicators of a survey today: it may have been begun while they were in
 * calibration, and left. Empty where both may be used, or an inspector allowed it.
 */
export function surveyInstrumentFaults(
  { setUp }: Pick<DialSurvey, 'setUp'>,
  { instruments, exceptions, today: day }: MeasuredValueContext,
): readonly Fault[] {
  const fields = openFields({})
  for (const name of ['instrumentId', 'secondInstrumentId'] as const) {
    const instrument = instruments.find((one) => one.id === setUp[name])
    if (instrument !== undefined) {
      checkLabel(fields, name, { instrument, day, recordedOn: day, exceptions })
    }
  }
  return fields.faults
}
