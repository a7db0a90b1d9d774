import { houseRule } from './agreed-rule.ts'
import { type CertificateRecord, certificateFormat } from './certificate.ts'

/**
 * A stored record in the form of today. Version 1 knew simple acceptance alone, kept no budgets,
 * and no concessions, exceptions or doubts: it is shown as what it was. Early records of version 2
 * don't say which share of a limit an uncertainty could take up. What was stored stays.
 */
export function liftCertificateRecord(stored: CertificateRecord): CertificateRecord {
  const version: number = stored.format.version
  const limitSet = { ...unstatedShare, ...stored.limitSet }
  if (version === certificateFormat.version) return { ...stored, limitSet }
  return {
    ...stored,
    limitSet,
    rule: houseRule,
    results: [],
    exceptions: [],
    doubts: [],
  }
}

const unstatedShare = { uncertaintyShareAtMost: null } as const
