import type { Input } from '../../domain/fields.ts'
import type { StaticTestBudgetInput } from '../../domain/static-test.ts'
import { typedText } from '../typed-text.ts'
import type { StaticTestDesk } from './desk.ts'

/** Fields of the form that name an instrument. */
export const instrumentFields = [
  'gaugeInstrumentId',
  'thermometerInstrumentId',
  'volumeInstrumentId',
] as const

/** The instrument that is chosen so far. */
export function chosen(
  input: Input,
  name: (typeof instrumentFields)[number],
  desk: StaticTestDesk,
) {
  return desk.instruments.find((one) => String(one.id) === typedText(input[name]))
}

/** The day on which it is held. */
export function dayOf(input: Input, desk: StaticTestDesk): string {
  return typedText(input.startedAt).slice(0, 10) || desk.now.slice(0, 10)
}

/** With what it is tested so far, and what is stated for the uncertainty. */
export function setUpOf(input: Input, desk: StaticTestDesk, budgetInput: StaticTestBudgetInput) {
  return {
    gaugeInstrumentId: chosen(input, 'gaugeInstrumentId', desk)?.id ?? 0,
    thermometerInstrumentId: chosen(input, 'thermometerInstrumentId', desk)?.id ?? null,
    volumeInstrumentId: chosen(input, 'volumeInstrumentId', desk)?.id ?? null,
    startedAt: dayOf(input, desk),
    budgetInput,
  }
}
