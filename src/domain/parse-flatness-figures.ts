import type { Fields } from './fields.ts'
import {
  type BandPattern,
  bandPatterns,
  flatnessBounds,
  type NewFlatnessReading,
} from './flatness.ts'
import { parseDirections } from './parse-directions.ts'
import { type UnreadableCause, unreadableCauses } from './unreadable-cause.ts'

/** What the figure itself depends on; its uncertainty depends on more. */
export type ParsedFlatnessFigures = Pick<
  NewFlatnessReading,
  'pattern' | 'ringCentre' | 'unreadableCause' | 'directions' | 'viewingAngleDeg'
>

/**
 * Reads the part of a reading that its figures depend on, so that an answer can be shown while
 * the rest is not entered yet. Faults are collected in `fields`.
 */
export function parseFlatnessFigures(fields: Fields): ParsedFlatnessFigures {
  const before = fields.faults.length
  const pattern = fields.choice('pattern', bandPatterns)
  const isChosen = fields.faults.length === before
  return {
    pattern,
    ringCentre: parseRingCentre(fields, pattern),
    unreadableCause: parseCause(fields, pattern),
    directions: parseDirections(fields, isChosen ? pattern : null),
    viewingAngleDeg: fields.optionalDecimal('viewingAngleDeg', flatnessBounds.viewingAngleDeg) ?? 0,
  }
}

/** Which way the middle stands is asked of rings only; beside another pattern it says nothing. */
function parseRingCentre(fields: Fields, pattern: BandPattern): 'high' | 'low' | null {
  const ringCentre = fields.optionalChoice('ringCentre', ['high', 'low'])
  return pattern === 'rings' ? ringCentre : null
}

/** Why nothing was seen is asked of an unreadable face; beside another pattern it says nothing. */
function parseCause(fields: Fields, pattern: BandPattern): UnreadableCause | null {
  const cause = fields.optionalChoice('unreadableCause', unreadableCauses)
  return pattern === 'unreadable' ? cause : null
}
