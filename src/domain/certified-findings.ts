import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import type { NewFinding } from './finding.ts'
import type { NewPartLine } from './part-line.ts'

type Hand = { readonly recordedByName: string; readonly recordedAt: string }
type Correction = 'workOrderId' | 'replacesId' | 'reason'

/** What was seen on a part; the suspected cause is printed apart, as an opinion. */
export type CertifiedFinding = Omit<NewFinding, Correction> & Hand

/** What became of a part, and what a new one is known by. */
export type CertifiedPart = Omit<NewPartLine, Correction> & Hand

/** The findings that no correction took the place of, oldest first. */
export function certifiedFindings({ findings }: Evidence): readonly CertifiedFinding[] {
  return currentOnly(findings).map((one) => ({
    part: one.part,
    term: one.term,
    severity: one.severity,
    fromHour: one.fromHour,
    toHour: one.toHour,
    radialPlace: one.radialPlace,
    isBeforeCleaning: one.isBeforeCleaning,
    observation: one.observation,
    suspectedCause: one.suspectedCause,
    causeNote: one.causeNote,
    photoSha256: one.photoSha256,
    recordedByName: one.recordedByName,
    recordedAt: one.recordedAt,
  }))
}

/** The part lines that no correction took the place of, oldest first. */
export function certifiedParts({ partLines }: Evidence): readonly CertifiedPart[] {
  return currentOnly(partLines).map((one) => ({
    part: one.part,
    description: one.description,
    fate: one.fate,
    quantityCount: one.quantityCount,
    batch: one.batch,
    certificate: one.certificate,
    compound: one.compound,
    curedOn: one.curedOn,
    note: one.note,
    recordedByName: one.recordedByName,
    recordedAt: one.recordedAt,
  }))
}
