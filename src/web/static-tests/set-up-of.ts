import type { Input } from '../../domain/fields.ts'
import type { StaticTestBudgetInput } from '../../domain/static-test.ts'
import { chosenInstrument } from './chosen-instrument.ts'
import { dayOf } from './day-of.ts'
import type { StaticTestDesk } from './desk.ts'

/** With what it is tested so far, and what is stated for the uncertainty. */
export function setUpOf(input: Input, desk: StaticTestDesk, budgetInput: StaticTestBudgetInput) {
  return {
    gaugeInstrumentId: chosenInstrument(input, 'gaugeInstrumentId', desk)?.id ?? 0,
    thermometerInstrumentId: chosenInstrument(input, 'thermometerInstrumentId', desk)?.id ?? null,
    volumeInstrumentId: chosenInstrument(input, 'volumeInstrumentId', desk)?.id ?? null,
    startedAt: dayOf(input, desk),
    budgetInput,
  }
}
