import type { NewLimit } from './limit-set.ts'
import { type LimitUnit, limitUnitMeaning, limitUnits } from './limit-unit.ts'
import { storedLimitUnit } from './limit-units-of.ts'
import { optionalPlainText, plainText } from './plain-text.ts'
import { typedPressure } from './pressure-units.ts'

export const limitEntryFields = [
  'characteristic',
  'faceMaterial',
  'componentKind',
  'service',
  'diameterOverMm',
  'diameterUpToMm',
  'pressureOver',
  'pressureUpTo',
  'pressureUnit',
  'speedOverPerMin',
  'speedUpToPerMin',
  'lower',
  'upper',
  'unit',
  'perMmOf',
  'within',
  'withinUnit',
  'volumeAtMostL',
  'startAtLeast',
  'startUnit',
  'asWritten',
  'basis',
  'source',
  'edition',
  'clause',
  'leaveOut',
] as const

/** A limit as a form shows it, every part a text. */
export type LimitEntry = Readonly<Record<(typeof limitEntryFields)[number], string>>

export const blankLimitEntry = Object.fromEntries(
  limitEntryFields.map((name) => [name, '']),
) as LimitEntry

/** The time of a drop: the first is the stored one. */
export const withinUnits = ['s', 'min'] as const
export type WithinUnit = (typeof withinUnits)[number]

/**
 * A limit as an entry that reads back as exactly the same limit: as it was typed; where that is
 * not kept, in helium bands if it is a count of quarter bands, else as it is stored.
 */
export function limitEntry(limit: NewLimit): LimitEntry {
  return {
    ...blankLimitEntry,
    ...numbers(limit),
    ...pressures(limit),
    ...hold(limit),
    characteristic: limit.characteristic,
    faceMaterial: limit.faceMaterial ?? '',
    componentKind: limit.componentKind ?? '',
    service: limit.service ?? '',
    diameterOverMm: optionalPlainText(limit.diameterOverMm),
    diameterUpToMm: optionalPlainText(limit.diameterUpToMm),
    speedOverPerMin: optionalPlainText(limit.speedOverPerMin),
    speedUpToPerMin: optionalPlainText(limit.speedUpToPerMin),
    perMmOf: limit.perMmOf ?? '',
    volumeAtMostL: optionalPlainText(limit.volumeAtMostL),
    asWritten: limit.asWritten,
    basis: limit.basis,
    source: limit.source,
    edition: limit.edition,
    clause: limit.clause,
  }
}

function numbers(limit: NewLimit): Pick<LimitEntry, 'lower' | 'upper' | 'unit'> {
  const { typedLower, typedUpper, typedUnit } = limit
  if (limitUnits.some((one) => one === typedUnit)) {
    return { lower: typedLower, upper: typedUpper, unit: typedUnit }
  }
  const bands = quarterBands(limit)
  if (bands !== undefined) return { lower: '', upper: plainText(bands), unit: 'helium-bands' }
  const { lower, upper, characteristic, perMmOf } = limit
  const unit: LimitUnit = storedLimitUnit(characteristic, perMmOf !== null)
  return { lower: optionalPlainText(lower), upper: optionalPlainText(upper), unit }
}

function quarterBands({ characteristic, lower, upper }: NewLimit): number | undefined {
  if (characteristic !== 'flatness' || lower !== null || upper === null) return undefined
  if (upper > 100) return undefined
  const { fromStored, toStored } = limitUnitMeaning['helium-bands']
  const bands = Math.round(fromStored(upper) * 4) / 4
  return toStored(bands) === upper ? bands : undefined
}

/** Both ends of a range in one unit: in bar only where both read back from it. */
function pressures(
  limit: NewLimit,
): Pick<
  LimitEntry,
  'pressureOver' | 'pressureUpTo' | 'pressureUnit' | 'startAtLeast' | 'startUnit'
> {
  const { pressureOverKPa: over, pressureUpToKPa: upTo, startAtLeastKPaGauge: start } = limit
  const stated = [over, upTo].filter((one) => one !== null)
  const isBar = stated.every((one) => typedPressure(one).unit === 'bar')
  const text = (kPa: number | null) => {
    if (kPa === null) return ''
    return isBar ? typedPressure(kPa).value : plainText(kPa)
  }
  const unit = isBar ? 'bar' : 'kPa'
  return {
    pressureOver: text(over),
    pressureUpTo: text(upTo),
    pressureUnit: stated.length === 0 ? '' : unit,
    startAtLeast: optionalPlainText(start),
    startUnit: start === null ? '' : 'kPa',
  }
}

function hold({ withinS }: NewLimit): Pick<LimitEntry, 'within' | 'withinUnit'> {
  if (withinS === null) return { within: '', withinUnit: '' }
  const isWholeMinutes = withinS % 60 === 0
  return isWholeMinutes
    ? { within: plainText(withinS / 60), withinUnit: 'min' }
    : { within: plainText(withinS), withinUnit: 's' }
}
