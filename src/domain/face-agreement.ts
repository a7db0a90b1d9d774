import { atMost } from '../science/acceptance/at-most.ts'
import { requireRange } from '../science/check/require-range.ts'

/** A figure with its expanded uncertainty, in um. */
export type ExpandedFigure = { readonly valueUm: number; readonly expandedUm: number }

export type FaceAgreement = {
  /** Second less first. */
  readonly differenceUm: number
  /** Of the difference. */
  readonly expandedUm: number
  readonly enNumber: number
  readonly isWithin: boolean
}

/**
 * Says whether two figures of one face agree.
 *
 * enNumber = |second - first| / sqrt(U1^2 + U2^2); they agree from 0 to 1
 *
 * @param first, second in um, expandedUm above 0
 * @throws RangeError where an uncertainty is not above 0
 * Validity: of independent readings. Where both were read with one flat and one lamp, part of both
 *   uncertainties is common and drops out of the difference: the rule is then too mild.
 * Source: En number, ISO 13528 and ISO/IEC 17043, from memory.
 */
export function faceAgreement(first: ExpandedFigure, second: ExpandedFigure): FaceAgreement {
  for (const { expandedUm } of [first, second]) {
    requireRange('faceAgreement', 'expandedUm', expandedUm, { from: Number.MIN_VALUE, to: 1e6 })
  }
  const differenceUm = second.valueUm - first.valueUm
  const expandedUm = Math.hypot(first.expandedUm, second.expandedUm)
  const enNumber = Math.abs(differenceUm) / expandedUm
  return { differenceUm, expandedUm, enNumber, isWithin: atMost({ value: enNumber, limit: 1 }) }
}
