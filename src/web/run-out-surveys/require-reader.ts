import { AppError } from '../../domain/app-error.ts'
import type { AppContext } from '../context.ts'
import { typedText } from '../typed-text.ts'
import { viewer } from '../viewer.ts'

/**
 * A reading may be sent long after it was typed, and another person may have signed in on the same
 * tablet meanwhile: it is recorded under the name of who typed it or not at all.
 * @param readerId for whom the form was drawn; absent where no form was
 * @throws AppError conflict `other-reader`
 */
export function requireReader(c: AppContext, readerId: unknown): void {
  const drawnFor = typedText(readerId)
  if (drawnFor !== '' && drawnFor !== String(viewer(c).id)) {
    throw new AppError('conflict', 'other-reader')
  }
}
