import type { Fault } from '../src/domain/fault.ts'
import { faultSentence } from './words/en/faults.ts'

/** The `error` prop of a field: its one sentence, or nothing. */
export function errorOf(faults: readonly Fault[], field: string): { error?: string } {
  const fault = faults.find((one) => one.field === field)
  return fault === undefined ? {} : { error: faultSentence(fault) }
}
