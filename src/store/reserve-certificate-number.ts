import { numberPattern } from './certificate-number-pattern.ts'
import { lastNumber } from './last-number.ts'
import type { Store } from './open.ts'

export type ReservedNumber = { readonly number: string; readonly sequence: number }

/**
 * The next certificate number of a year, looked at and not yet taken: the document is drawn with
 * it, and `release` takes it or says that another one was faster.
 * @param fresh `code`: six signs by chance, so that nobody finds a certificate by counting
 */
export function reserveCertificateNumber(
  store: Store,
  fresh: { readonly year: number; readonly code: string },
): ReservedNumber {
  const { year, code } = fresh
  const sequence = lastNumber(store, 'certificate', year) + 1
  const number = `C-${year}-${String(sequence).padStart(4, '0')}-${code}`
  if (numberPattern.test(number)) return { number, sequence }
  throw new RangeError(`reserveCertificateNumber requires six signs 0-9 A-Z, got ${code}`)
}
