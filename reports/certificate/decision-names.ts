import type { CertifiedResult } from '../../src/domain/certified-decision.ts'
import { flatnessSees } from '../../src/domain/flatness-sees.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { certificateDecisionWords as words } from '../../views/words/en/certificate-decisions.ts'
import { flatnessSeesWords } from '../../views/words/en/flatness-sees.ts'

const { item, results } = certificateWords

/** What a result is of, and where: `Leak rate, whole seal`. */
export function resultName(result: CertifiedResult): string {
  const place = placeName(result)
  const { characteristic, method } = result
  const name =
    characteristic === 'flatness'
      ? flatnessSeesWords[flatnessSees(method)].name
      : words.characteristics[characteristic]
  return place === undefined ? name : `${name}, ${place}`
}

/** Where on the seal; undefined for what belongs to the machine. */
export function placeName({
  componentKind,
  section,
}: Pick<CertifiedResult, 'componentKind' | 'section'>): string | undefined {
  if (componentKind !== null) return item.componentKinds[componentKind].toLowerCase()
  return section === null ? undefined : results.sections[section]
}

/** The limit as it holds here, with its unit. */
export function limitThatHolds({
  lower,
  upper,
  unit,
}: Pick<CertifiedResult, 'lower' | 'upper' | 'unit'>): string {
  const at = words.units[unit]
  const sides = [
    ...(lower === null ? [] : [results.atLeast(lower.text, at)]),
    ...(upper === null ? [] : [results.atMost(upper.text, at)]),
  ]
  return sides.length === 0 ? words.noLimit : sides.join(', ')
}

/** The figure with U and its unit, or that there is none. */
export function valueWithUnit({ value, text, unit }: CertifiedResult): string {
  return value === null ? words.unreadable : `${text} ${words.units[unit]}`
}
