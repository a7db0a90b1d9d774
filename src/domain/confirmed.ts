import type { Input } from './fields.ts'

/** The field by which a user says that values beyond the trade's window stand. */
export const confirmField = 'confirmBeyondWindow'

/**
 * Says whether the user confirmed that values beyond the trade's window stand.
 * @param input a form (`yes`) or a JSON body (`true` or `yes`); anything else confirms nothing
 */
export function isConfirmed(input: Input): boolean {
  const value = input[confirmField]
  return value === true || value === 'yes'
}
