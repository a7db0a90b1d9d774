import { AppError } from '../domain/app-error.ts'
import { numberPattern } from './certificate-number-pattern.ts'
import type { Store } from './open.ts'
import { takeNumber } from './take-number.ts'

/**
 * Takes the number inside the transaction of the release.
 * @throws AppError conflict `number-taken` where it is not the next one any more
 */
export function takeCertificateNumber(
  store: Store,
  number: string,
  expectedSequence: number,
): void {
  const [, year, sequence] = numberPattern.exec(number) ?? []
  if (Number(sequence) !== expectedSequence) {
    throw new RangeError(`release requires the number as it was reserved, got ${number}`)
  }
  if (takeNumber(store, 'certificate', Number(year)) !== expectedSequence) {
    throw new AppError('conflict', 'number-taken', { number })
  }
}
