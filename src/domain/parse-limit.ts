import { pressureToKPa } from '../science/units/pressure-to-kpa.ts'
import { belongsToFace } from './belongs-to-face.ts'
import { type Characteristic, characteristics } from './characteristic.ts'
import type { Bounds, Fields } from './fields.ts'
import { limitEntryFields, withinUnits } from './limit-entry.ts'
import { limitBases, type NewLimit, type PerMmOf } from './limit-set.ts'
import { isPerMmUnit, type LimitUnit, limitUnitMeaning } from './limit-unit.ts'
import { limitBounds, limitUnitsOf, perMmSizesOf } from './limit-units-of.ts'
import { parseLimitConditions } from './parse-limit-conditions.ts'
import { pressureUnits, startBounds } from './pressure-units.ts'
import { readInUnit } from './read-in-unit.ts'

export const limitTextLength = { asWritten: 200, source: 400, edition: 80, clause: 80 } as const
export const limitHoldBounds = {
  withinS: { min: 1, max: 604_800 },
  volumeAtMostL: { min: 0.001, max: 100_000 },
} as const satisfies Record<string, Bounds>

/** Reads one limit of a set; what doesn't belong to its characteristic must be blank. */
export function parseLimit(part: Fields): NewLimit {
  part.only(...limitEntryFields)
  const characteristic = part.choice('characteristic', characteristics)
  const isDrop = characteristic === 'static-drop'
  return {
    characteristic,
    ...parseLimitConditions(part, belongsToFace(characteristic)),
    ...readNumbers(part, characteristic),
    withinS: onlyWhere(part, isDrop, ['within', 'withinUnit'], () => readWithin(part)),
    volumeAtMostL: onlyWhere(part, isDrop, ['volumeAtMostL'], () =>
      part.optionalDecimal('volumeAtMostL', limitHoldBounds.volumeAtMostL),
    ),
    startAtLeastKPaGauge: onlyWhere(part, isDrop, ['startAtLeast', 'startUnit'], () =>
      readStart(part),
    ),
    asWritten: part.text('asWritten', limitTextLength.asWritten),
    basis: part.choice('basis', limitBases),
    source: part.text('source', limitTextLength.source),
    edition: part.optionalText('edition', limitTextLength.edition),
    clause: part.optionalText('clause', limitTextLength.clause),
  }
}

type Numbers = Pick<
  NewLimit,
  'lower' | 'upper' | 'perMmOf' | 'typedLower' | 'typedUpper' | 'typedUnit'
>

/** Stored in the unit of the characteristic; what was typed is kept beside it. */
function readNumbers(part: Fields, characteristic: Characteristic): Numbers {
  const before = part.faults.length
  const unit: LimitUnit = part.choice('unit', limitUnitsOf(characteristic))
  const isUnitKnown = part.faults.length === before
  const perMmOf = readPerMmOf(part, characteristic, isUnitKnown && isPerMmUnit(unit))
  const bounds = isUnitKnown ? limitBounds(characteristic, unit) : anyUnit
  const { toStored } = limitUnitMeaning[unit]
  const [lower, upper] = [
    part.optionalDecimal('lower', bounds),
    part.optionalDecimal('upper', bounds),
  ]
  if (lower === null && upper === null) part.fault('upper', 'limit-needed')
  if (lower !== null && upper !== null && lower >= upper) part.fault('lower', 'lower-not-below')
  // Of a faulty number there is nothing to convert: the stand-in may lie outside of the science.
  const stored = (value: number | null) =>
    value === null || part.faults.length > before ? null : toStored(value)
  return {
    lower: stored(lower),
    upper: stored(upper),
    perMmOf,
    typedLower: part.typed('lower').trim(),
    typedUpper: part.typed('upper').trim(),
    typedUnit: unit,
  }
}

/** Bounds that say nothing: without its unit a value can't be held against any. */
const anyUnit = { min: 0, max: 1e9 } as const

function readPerMmOf(
  part: Fields,
  characteristic: Characteristic,
  isPerMm: boolean,
): PerMmOf | null {
  return onlyWhere(part, isPerMm, ['perMmOf'], () =>
    part.choice('perMmOf', perMmSizesOf(characteristic)),
  )
}

function readWithin(part: Fields): number | null {
  if (!part.isGiven('within')) {
    part.fault('within', 'empty')
    return null
  }
  const inS = { s: 1, min: 60 } as const
  const { min, max } = limitHoldBounds.withinS
  return readInUnit(part, {
    name: 'within',
    unitName: 'withinUnit',
    units: withinUnits,
    boundsOf: (unit) => ({ min: min / inS[unit], max: max / inS[unit] }),
    toStored: (value, unit) => value * inS[unit],
  })
}

/** In kPa gauge, from the unit it is written in; value and unit go together, or neither is there. */
function readStart(part: Fields): number | null {
  return readInUnit(part, {
    name: 'startAtLeast',
    unitName: 'startUnit',
    units: pressureUnits,
    boundsOf: (unit) => startBounds[unit],
    toStored: pressureToKPa,
  })
}

function onlyWhere<T>(
  part: Fields,
  isThere: boolean,
  names: readonly string[],
  read: () => T,
): T | null {
  if (isThere) return read()
  for (const name of names) if (part.isGiven(name)) part.fault(name, 'not-here')
  return null
}
