import { AppError } from '../domain/app-error.ts'

/**
 * The record that a correction names, out of those of its order; undefined where none is named.
 * @throws AppError not-found where it is not of this order; conflict where it was replaced before
 */
export function replacedRecord<
  T extends { readonly id: number; readonly replacedById: number | null },
>(records: readonly T[], named: string | undefined): T | undefined {
  if (named === undefined || named === '') return undefined
  const found = records.find((one) => String(one.id) === named)
  if (found === undefined) throw new AppError('not-found', 'no-page')
  if (found.replacedById !== null) throw new AppError('conflict', 'already-replaced')
  return found
}
