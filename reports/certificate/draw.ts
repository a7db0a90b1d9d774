import type { CertificateRecord } from '../../src/domain/certificate.ts'
import { drawDocument } from '../draw-document.ts'
import { certificateContent } from './content.ts'

/** The certificate as PDF. The same record gives the same bytes. */
export function drawCertificate(record: CertificateRecord): Promise<Buffer> {
  return drawDocument(certificateContent(record))
}
