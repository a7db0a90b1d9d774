import { AppError } from '../../domain/app-error.ts'
import { findPublicCertificate } from '../../store/find-public-certificate.ts'
import { readStoredFile } from '../../store/read-stored-file.ts'
import { requireCertificate } from '../../store/require-certificate.ts'
import type { AppContext } from '../context.ts'
import { viewer } from '../viewer.ts'

export function apiShowCertificate(c: AppContext): Response {
  const number = c.req.param('number') ?? ''
  const { revision, record, sha256, issuedAt } = requireCertificate(
    c.var.shop.store,
    number,
    viewer(c),
  )
  return c.json({ number, revision, issuedAt, sha256, record })
}

export function apiDownloadCertificate(c: AppContext): Response {
  const number = (c.req.param('file') ?? '').replace(/\.pdf$/, '')
  const { store } = c.var.shop
  const { sha256 } = requireCertificate(store, number, viewer(c))
  const { bytes, mediaType } = readStoredFile(store, sha256)
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
  const number = (c.req.param('number') ?? '').trim().toUpperCase()
  const found = findPublicCertificate(c.var.shop.store, number)
  if (found === undefined) throw new AppError('not-found', 'no-certificate')
  return c.json(found)
}
