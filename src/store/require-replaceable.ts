import { AppError } from '../domain/app-error.ts'

/**
 * Refuses a correction of what is not of this order, or was corrected before.
 * @param records all of the order
 * @throws AppError conflict `not-in-order`, `already-replaced`
 */
export function requireReplaceable(
  records: readonly { readonly id: number; readonly replacedById: number | null }[],
  replacesId: number,
): void {
  const replaced = records.find((one) => one.id === replacesId)
  if (replaced === undefined) throw new AppError('conflict', 'not-in-order')
  if (replaced.replacedById !== null) throw new AppError('conflict', 'already-replaced')
}
