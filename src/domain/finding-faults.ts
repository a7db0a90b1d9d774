import type { Fault } from './fault.ts'
import type { ParsedFinding } from './parse-finding.ts'
import type { Picture } from './parse-picture.ts'
import type { Parsed } from './parsed.ts'

/** What is wrong with a finding and its photograph, each by itself, or else both together. */
export function findingFaults(
  finding: Parsed<ParsedFinding>,
  picture: Parsed<Picture | null>,
): readonly Fault[] {
  const own = [...(finding.ok ? [] : finding.faults), ...(picture.ok ? [] : picture.faults)]
  const isBoth = finding.ok && finding.value.isPhotoTakenOut && picture.ok && picture.value !== null
  const both = { one: 'file', other: 'isPhotoTakenOut' }
  return isBoth ? [{ field: 'isPhotoTakenOut', kind: 'one-of-two', with: both }] : own
}
