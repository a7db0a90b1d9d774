import { text, whole } from './json-schema.ts'

/** What every record takes that may replace an earlier one. */
export const correction = {
  replacesId: whole,
  reason: text,
  confirmBeyondWindow: { type: 'boolean' },
}
