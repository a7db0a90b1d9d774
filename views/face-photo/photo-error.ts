import type { Fault } from '../../src/domain/fault.ts'
import { photoField, photoSentence } from './photo-fault.ts'

/** What is wrong with a field of the form, as its control takes it; nothing where it is right. */
export function photoError(faults: readonly Fault[], name: string): { error?: string } {
  const fault = faults.find((one) => photoField(one) === name)
  return fault === undefined ? {} : { error: photoSentence(fault) }
}
