import { CertificatePage } from '../../../views/certificate-page.tsx'
import { CertificatesPage } from '../../../views/certificates-page.tsx'
import { VerifyPage, type VerifyState } from '../../../views/verify-page.tsx'
import { readCertificateNumber } from '../../domain/certificate-number.ts'
import { findPublicCertificate } from '../../store/find-public-certificate.ts'
import { listCertificates as listIssued } from '../../store/list-certificates.ts'
import { readStoredFile } from '../../store/read-stored-file.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import { certificateOf } from '../certificate-of.ts'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { viewer } from '../viewer.ts'

export function listCertificates(c: AppContext): Promise<Response> {
  const { role, customerId } = viewer(c)
  const isCustomer = role === 'customer'
  // A customer without a customer's record owns nothing, and 0 is nobody's id.
  const certificates = listIssued(
    c.var.shop.store,
    isCustomer ? { customerId: customerId ?? 0 } : {},
  )
  const page = (
    <CertificatesPage frame={frameOf(c)} certificates={certificates} isCustomer={isCustomer} />
  )
  return sendPage(c, page)
}

export function showCertificate(c: AppContext): Promise<Response> {
  const certificate = certificateOf(c, c.req.param('number') ?? '')
  const order = requireWorkOrder(c.var.shop.store, certificate.record.workOrder.number, viewer(c))
  const page = (
    <CertificatePage
      frame={frameOf(c)}
      certificate={certificate}
      sealId={order.sealId}
      isStaff={viewer(c).role !== 'customer'}
    />
  )
  return sendPage(c, page)
}

/** The bytes as they were stored at the release; nothing is drawn again. */
export function downloadCertificate(c: AppContext): Response {
  const { number, revision, sha256 } = certificateOf(c, c.req.param('number') ?? '')
  const etag = `"${sha256}"`
  const headers = { etag, 'cache-control': 'private, no-cache' }
  if (isKnown(c.req.header('if-none-match'), etag)) {
    return new Response(null, { status: 304, headers })
  }
  const { bytes, mediaType } = readStoredFile(c.var.shop.store, sha256)
  const name = revision === 0 ? `${number}.pdf` : `${number}-revision-${revision}.pdf`
  return new Response(new Uint8Array(bytes), {
    headers: {
      ...headers,
      'content-type': mediaType,
      'content-disposition': `inline; filename="${name}"`,
    },
  })
}

export function startVerify(c: AppContext): Promise<Response> | Response {
  const typed = c.req.query('number')
  if (typed === undefined) return verifyPage(c, { kind: 'start', isEmpty: false }, 200)
  const trimmed = typed.trim().slice(0, 100)
  if (trimmed === '') return verifyPage(c, { kind: 'start', isEmpty: true }, 422)
  const number = readCertificateNumber(trimmed) ?? trimmed
  return c.redirect(`/verify/${encodeURIComponent(number)}`, 303)
}

export function verify(c: AppContext): Promise<Response> {
  const typed = (c.req.param('number') ?? '').slice(0, 100)
  const number = readCertificateNumber(typed)
  const certificate =
    number === undefined ? undefined : findPublicCertificate(c.var.shop.store, number)
  if (certificate === undefined) return verifyPage(c, { kind: 'unknown', typed }, 404)
  return verifyPage(c, { kind: 'known', certificate }, 200)
}

/** A proxy may mark the tag as weak, and a browser may send several. */
function isKnown(header: string | undefined, etag: string): boolean {
  const tags = (header ?? '').split(',').map((one) => one.trim().replace(/^W\//, ''))
  return tags.includes(etag)
}

function verifyPage(c: AppContext, state: VerifyState, status: 200 | 404 | 422): Promise<Response> {
  return sendPage(c, <VerifyPage frame={frameOf(c)} state={state} />, status)
}
