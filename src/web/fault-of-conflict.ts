import { AppError } from '../domain/app-error.ts'
import type { Fault } from '../domain/fault.ts'

/**
 * Does what records, and turns the conflict that a field caused (`serial-taken`) into the fault of
 * that field: only the store, inside its transaction, knows what is taken already. A resent form
 * gets its first answer and never comes so far.
 */
export function faultOfConflict(
  conflicts: Readonly<Record<string, Fault>>,
  record: () => Response,
): Response | Fault {
  try {
    return record()
  } catch (error) {
    const fault = error instanceof AppError ? conflicts[error.reason] : undefined
    if (fault === undefined) throw error
    return fault
  }
}
