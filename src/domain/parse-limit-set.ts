import { pressureToKPa } from '../science/units/pressure-to-kpa.ts'
import { type Characteristic, characteristics } from './characteristic.ts'
import type { Fault } from './fault.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { limitEntryFields } from './limit-entry.ts'
import { limitBases, type NewLimit, type NewLimitSet } from './limit-set.ts'
import { limitUnitMeaning, limitUnits, startBounds, startUnits } from './limit-unit.ts'
import type { Parsed } from './parsed.ts'
import { faceMaterials } from './seal.ts'

export const limitSetTextLength = { name: 120, note: 400, asWritten: 200, source: 400 } as const
export const limitSetBounds = {
  directionsRequiredCount: { min: 1, max: 8 },
  limitCount: { min: 1, max: 24 },
  withinS: { min: 1, max: 604_800 },
  volumeAtMostL: { min: 0.001, max: 100_000 },
} as const

export type ParsedLimitSet = Omit<
  NewLimitSet,
  'version' | 'datedOn' | 'writtenById' | 'writtenByName'
>

/**
 * Reads a limit set. A part that is blank, or marked to be left out, is no limit.
 * @param context name: of the set that this is a new version of; null where it gets its own
 */
export function parseLimitSet(
  input: Input,
  context: { readonly name: string | null },
): Parsed<ParsedLimitSet> {
  const fields = openFields(input)
  const own = context.name === null ? ['name'] : []
  fields.only(...own, 'note', 'directionsRequiredCount', 'limits')
  const name = context.name ?? fields.text('name', limitSetTextLength.name)
  const note = fields.optionalText('note', limitSetTextLength.note)
  const { directionsRequiredCount: directions, limitCount } = limitSetBounds
  const directionsRequiredCount = fields.whole('directionsRequiredCount', directions)
  const parts = fields
    .list('limits', { min: 0, max: limitCount.max })
    .filter((part) => part.typed('leaveOut') === '' && !isBlank(part))
  const limits = parts.map(parseLimit)
  refuseDoubles(parts, limits)
  if (limits.length < limitCount.min && !isFaulty(fields.faults, 'limits')) {
    fields.fault('limits', 'too-few', { ...limitCount })
  }
  return fields.finish({
    name,
    note,
    directionsRequiredCount,
    uncertaintyShareAtMost: 1 / 3,
    limits,
  })
}

function isBlank(part: Fields): boolean {
  return limitEntryFields.every((name) => !part.isGiven(name))
}

function parseLimit(part: Fields): NewLimit {
  part.only(...limitEntryFields)
  const characteristic = part.choice('characteristic', characteristics)
  const isFlatness = characteristic === 'flatness'
  const isDrop = characteristic === 'static-drop'
  const { withinS, volumeAtMostL } = limitSetBounds
  return {
    characteristic,
    faceMaterial: onlyWhere(part, isFlatness, 'faceMaterial', () =>
      part.optionalChoice('faceMaterial', faceMaterials),
    ),
    upper: readUpper(part, characteristic),
    withinS: onlyWhere(part, isDrop, 'withinS', () => part.decimal('withinS', withinS)),
    volumeAtMostL: onlyWhere(part, isDrop, 'volumeAtMostL', () =>
      part.optionalDecimal('volumeAtMostL', volumeAtMostL),
    ),
    startAtLeastKPaGauge: readStart(part, isDrop),
    asWritten: part.text('asWritten', limitSetTextLength.asWritten),
    basis: part.choice('basis', limitBases),
    source: part.text('source', limitSetTextLength.source),
    componentKind: null,
    service: null,
    diameterOverMm: null,
    diameterUpToMm: null,
    pressureOverKPa: null,
    pressureUpToKPa: null,
    lower: null,
    perMmOf: null,
    typedLower: '',
    typedUpper: part.typed('upper'),
    typedUnit: part.typed('unit'),
    edition: '',
    clause: '',
  }
}

/** Bounds that say nothing: without its unit a value can't be held against any. */
const anyUnit = { min: 0, max: 1e9 } as const

/** In the unit of the characteristic, from the unit it is written in. */
function readUpper(part: Fields, characteristic: Characteristic): number {
  const before = part.faults.length
  const unit = part.choice('unit', limitUnits)
  const meaning = limitUnitMeaning[unit]
  if (part.faults.length === before && meaning.characteristic !== characteristic) {
    const choices = limitUnits.filter(
      (one) => limitUnitMeaning[one].characteristic === characteristic,
    )
    part.fault('unit', 'not-a-choice', { choices: choices.join(', ') })
  }
  const isUnitFaulty = part.faults.length > before
  const value = part.decimal('upper', isUnitFaulty ? anyUnit : meaning.bounds)
  return part.faults.length > before ? 0 : meaning.toStored(value)
}

/** In kPa gauge, from the unit it is written in; value and unit go together, or neither is there. */
function readStart(part: Fields, isDrop: boolean): number | null {
  const names = ['startAtLeast', 'startUnit']
  if (!isDrop) {
    for (const name of names) onlyWhere(part, false, name, () => null)
    return null
  }
  if (!names.some((name) => part.isGiven(name))) return null
  const before = part.faults.length
  const unit = part.choice('startUnit', startUnits)
  const isUnitFaulty = part.faults.length > before
  const value = part.decimal('startAtLeast', isUnitFaulty ? anyUnit : startBounds[unit])
  return part.faults.length > before ? null : pressureToKPa(value, unit)
}

function onlyWhere<T>(part: Fields, isThere: boolean, name: string, read: () => T): T | null {
  if (isThere) return read()
  if (part.isGiven(name)) part.fault(name, 'not-here')
  return null
}

/** Two limits for one thing would leave the verdict to chance. */
function refuseDoubles(parts: readonly Fields[], limits: readonly NewLimit[]): void {
  const known = new Set<string>()
  for (const [index, { characteristic, faceMaterial }] of limits.entries()) {
    const key = `${characteristic} ${faceMaterial}`
    if (known.has(key)) parts[index]?.fault('characteristic', 'taken')
    known.add(key)
  }
}

function isFaulty(faults: readonly Fault[], field: string): boolean {
  return faults.some((one) => one.field === field)
}
