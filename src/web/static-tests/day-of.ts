import type { Input } from '../../domain/fields.ts'
import { typedText } from '../typed-text.ts'
import type { StaticTestDesk } from './desk.ts'

/** The day on which it is held. */
export function dayOf(input: Input, desk: StaticTestDesk): string {
  return typedText(input.startedAt).slice(0, 10) || desk.now.slice(0, 10)
}
