import type { Fields, Input } from './fields.ts'
import { flatnessBounds } from './flatness.ts'
import type { FlatnessBudgetInput } from './flatness-budget-input.ts'
import { parseBow } from './parse-bow.ts'

export const flatnessBudgetFields = [
  'readingHalfWidthBands',
  'repeats',
  'repeatability',
  'viewingAngleLimitDeg',
  'thermal',
  'flatThermal',
  'opticalFlatToleranceUm',
] as const

/** How often one direction may be counted again. */
export const repeatCountBounds = { min: 2, max: 24 } as const

export const flatnessBudgetBounds = {
  halfWidthBands: { min: 0, max: 100 },
  toleranceUm: { min: 0, max: 100 },
  count: { min: 1, max: 1_000_000 },
  degreesOfFreedom: { min: 1, max: 1_000_000 },
} as const

/**
 * Reads what only the reader knows about how the bands were counted; each part may be left out
 * and is then kept as not stated. How far counts scatter is either told by counting again or known
 * beforehand, never both. Faults are collected in `fields`.
 */
export function parseFlatnessBudget(fields: Fields, input: Input): FlatnessBudgetInput {
  const { halfWidthBands, toleranceUm } = flatnessBudgetBounds
  const isAbsent = (name: string) => input[name] === undefined || input[name] === null
  if (!isAbsent('repeats') && !isAbsent('repeatability')) {
    fields.fault('repeatability', 'one-of-two', { one: 'repeats', other: 'repeatability' })
  }
  return {
    readingHalfWidthBands: fields.optionalDecimal('readingHalfWidthBands', halfWidthBands),
    repeats: isAbsent('repeats') ? [] : parseRepeats(fields),
    repeatability: isAbsent('repeatability') ? null : parseRepeatability(fields),
    viewingAngleLimitDeg: fields.optionalDecimal(
      'viewingAngleLimitDeg',
      flatnessBounds.viewingAngleDeg,
    ),
    thermal: isAbsent('thermal') ? null : parseBow(fields.group('thermal')),
    flatThermal: isAbsent('flatThermal') ? null : parseBow(fields.group('flatThermal')),
    opticalFlatToleranceUm: fields.optionalDecimal('opticalFlatToleranceUm', toleranceUm),
  }
}

function parseRepeats(fields: Fields): FlatnessBudgetInput['repeats'] {
  return fields.list('repeats', repeatCountBounds).map((part) => {
    part.only('bands')
    return {
      bands: part.decimal('bands', flatnessBounds.bands),
      typed: part.typed('bands').trim(),
    }
  })
}

/** How far counts scatter, as it is known; one count is enough where that is from elsewhere. */
function parseRepeatability(fields: Fields): FlatnessBudgetInput['repeatability'] {
  const part = fields.group('repeatability')
  const { halfWidthBands, count, degreesOfFreedom } = flatnessBudgetBounds
  part.only('standardDeviationBands', 'count', 'degreesOfFreedom')
  const known = part.optionalWhole('degreesOfFreedom', degreesOfFreedom)
  return {
    standardDeviationBands: part.decimal('standardDeviationBands', halfWidthBands),
    count: part.whole('count', known === null ? { ...count, min: 2 } : count),
    degreesOfFreedom: known,
  }
}
