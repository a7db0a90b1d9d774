import { houseRule } from './agreed-rule.ts'
import { type CertificateRecord, certificateFormat } from './certificate.ts'

/**
 * A stored record in the form of today. Version 1 knew simple acceptance alone, kept no budgets,
 * and no concessions, exceptions or doubts: it is shown as what it was. What was stored stays.
 */
export function liftCertificateRecord(stored: CertificateRecord): CertificateRecord {
  const version: number = stored.format.version
  if (version === certificateFormat.version) return stored
  return {
    ...stored,
    rule: houseRule,
    results: [],
    exceptions: [],
    doubts: [],
  }
}
