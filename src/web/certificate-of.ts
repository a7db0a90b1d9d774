import type { Certificate } from '../domain/certificate.ts'
import { readCertificateNumber } from '../domain/certificate-number.ts'
import { requireCertificate } from '../store/require-certificate.ts'
import type { AppContext } from './context.ts'
import { viewer } from './viewer.ts'

/**
 * The certificate of a number as typed: capitals, spaces and dashes are forgiven.
 * @throws AppError not-found, also where it is another customer's
 */
export function certificateOf(c: AppContext, typed: string): Certificate {
  return requireCertificate(c.var.shop.store, readCertificateNumber(typed) ?? typed, viewer(c))
}
