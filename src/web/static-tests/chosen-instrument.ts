import type { Input } from '../../domain/fields.ts'
import { typedText } from '../typed-text.ts'
import type { StaticTestDesk } from './desk.ts'
import type { instrumentFields } from './instrument-fields.ts'

/** The instrument that is chosen so far. */
export function chosenInstrument(
  input: Input,
  name: (typeof instrumentFields)[number],
  desk: StaticTestDesk,
) {
  return desk.instruments.find((one) => String(one.id) === typedText(input[name]))
}
