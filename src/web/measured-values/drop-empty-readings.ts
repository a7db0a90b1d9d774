import type { Input } from '../../domain/fields.ts'
import { nestedText } from '../nested-text.ts'

/**
 * The form always sends more readings than were made: empty ones are dropped, so that the rest
 * stand one after the other. The first stays, to be asked for.
 */
export function dropEmptyReadings(input: Input): Input {
  const parts: readonly unknown[] = Array.isArray(input.readings) ? input.readings : []
  const read = parts.filter((part) => nestedText(part, 'value').trim() !== '')
  return { ...input, readings: read.length === 0 ? [{ value: '' }] : read }
}
