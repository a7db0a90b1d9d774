import { AppError } from '../domain/app-error.ts'

/**
 * An id out of an address or a hidden field.
 * @throws AppError not-found with the reason given, where it can't be an id of ours
 */
export function idOf(text: string | undefined, reason: string): number {
  if (text === undefined || !/^\d{1,15}$/.test(text)) throw new AppError('not-found', reason)
  return Number(text)
}
