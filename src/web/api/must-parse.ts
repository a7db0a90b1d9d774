import type { Parsed } from '../../domain/parsed.ts'
import { InputRefused } from './input-refused.ts'

/** The value, or the refusal as the machine interface gives it. */
export function mustParse<T>(parsed: Parsed<T>): T {
  if (!parsed.ok) throw new InputRefused(parsed.faults)
  return parsed.value
}
