import { AppError } from '../../domain/app-error.ts'
import { readCertificateNumber } from '../../domain/certificate-number.ts'
import { findPublicCertificate } from '../../store/find-public-certificate.ts'
import { readStoredFile } from '../../store/read-stored-file.ts'
import { certificateOf } from '../certificate-of.ts'
import type { AppContext } from '../context.ts'

export function apiShowCertificate(c: AppContext): Response {
  const { number, revision, record, sha256, issuedAt } = certificateOf(
    c,
    c.req.param('number') ?? '',
  )
  return c.json({ number, revision, issuedAt, sha256, record })
}

export function apiDownloadCertificate(c: AppContext): Response {
  const file = c.req.param('file') ?? ''
  const { number, sha256 } = certificateOf(c, file.replace(/\.pdf$/, ''))
  const { bytes, mediaType } = readStoredFile(c.var.shop.store, sha256)
  return new Response(new Uint8Array(bytes), {
    headers: {
      'content-type': mediaType,
      'content-disposition': `inline; filename="${number}.pdf"`,
      etag: `"${sha256}"`,
    },
  })
}

/** What anyone who holds the certificate may know. */
export function apiVerify(c: AppContext): Response {
  const number = readCertificateNumber(c.req.param('number') ?? '')
  const found = number === undefined ? undefined : findPublicCertificate(c.var.shop.store, number)
  if (found === undefined) throw new AppError('not-found', 'no-certificate')
  return c.json(found)
}
