import type { CertifiedVerdict } from './certified-results.ts'

/** What the page for checking a certificate shows to anyone who holds its number. */
export type PublicCertificate = {
  readonly number: string
  readonly revision: number
  readonly issuedAt: string
  /** Of the PDF as issued. */
  readonly sha256: string
  readonly isInvented: boolean
  readonly workshopName: string
  readonly workOrderNumber: string
  readonly sealSerial: string
  /** With its revision; '' where none is known. */
  readonly sealDrawing: string
  readonly verdict: CertifiedVerdict
  readonly releasedByName: string
}
