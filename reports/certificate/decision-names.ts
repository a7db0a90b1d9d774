import type { CertifiedResult } from '../../src/domain/certified-decision.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { certificateDecisionWords as words } from '../../views/words/en/certificate-decisions.ts'

const { item, results } = certificateWords

/** What a result is of, and where: `Flatness, stationary seat`. */
export function resultName({ characteristic, componentKind, section }: CertifiedResult): string {
  const place =
    componentKind !== null
      ? [item.componentKinds[componentKind].toLowerCase()]
      : section !== null
        ? [results.sections[section]]
        : []
  return [words.characteristics[characteristic], ...place].join(', ')
}

/** The limit as it holds here, with its unit. */
export function limitThatHolds({ lower, upper, unit }: CertifiedResult): string {
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
