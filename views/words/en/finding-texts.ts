import type { CertifiedPart } from '../../../src/domain/certified-findings.ts'
import type { Finding } from '../../../src/domain/finding.ts'
import type { PartLine } from '../../../src/domain/part-line.ts'
import { findingsWords as w } from './findings.ts'

/** What was seen, where and how much, in one line; never a cause. */
export function findingText(
  one: Pick<
    Finding,
    'term' | 'severity' | 'fromHour' | 'toHour' | 'radialPlace' | 'isBeforeCleaning'
  >,
): string {
  const { severity, fromHour, toHour, radialPlace } = one
  return [
    w.terms[one.term],
    ...(severity === null ? [] : [w.severity[severity].toLowerCase()]),
    ...(fromHour === null || toHour === null ? [] : [w.place(String(fromHour), String(toHour))]),
    ...(radialPlace === null ? [] : [w.radialPlaces[radialPlace].toLowerCase()]),
    (one.isBeforeCleaning ? w.cleanings.yes : w.cleanings.no).toLowerCase(),
  ].join(', ')
}

/** The suspected cause with its reasons; null where none was said. */
export function causeText(one: Pick<Finding, 'suspectedCause' | 'causeNote'>): string | null {
  const { suspectedCause, causeNote } = one
  if (suspectedCause === 'not-said' && causeNote === '') return null
  const cause = suspectedCause === 'not-said' ? '' : w.causes[suspectedCause]
  return [cause, causeNote].filter((text) => text !== '').join(': ')
}

/** What a new part is known by; 'not recorded' where nothing is. */
export function identityText(
  line: Pick<PartLine, 'batch' | 'certificate' | 'compound' | 'curedOn' | 'fate'>,
): string {
  const { batch, certificate, compound, curedOn } = line
  const known = [
    ...(batch === '' ? [] : [w.identity.batch(batch)]),
    ...(certificate === '' ? [] : [w.identity.certificate(certificate)]),
    ...(compound === '' ? [] : [compound]),
    ...(curedOn === null ? [] : [w.identity.cured(curedOn)]),
  ]
  if (known.length > 0) return known.join(', ')
  return line.fate === 'replaced' ? w.notRecorded : ''
}

/** What a certificate says beside a part: what it is known by, and the note; the same on paper. */
export function certifiedPartTexts(part: CertifiedPart): readonly string[] {
  const known = identityText(part) || w.certificate.ofOldPart
  return part.note === '' ? [known] : [known, part.note]
}

/** Which part it is, with its description and how many of them. */
export function partText(line: Pick<PartLine, 'part' | 'description' | 'quantityCount'>): string {
  const name = [w.parts[line.part], line.description].filter((text) => text !== '').join(', ')
  return line.quantityCount > 1 ? `${line.quantityCount} × ${name}` : name
}
