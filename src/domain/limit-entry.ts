import { heightToBands } from '../science/optics/height-to-bands.ts'
import { lamps } from '../science/optics/lamps.ts'
import type { Characteristic } from './characteristic.ts'
import type { NewLimit } from './limit-set.ts'
import { type LimitUnit, limitUnitMeaning } from './limit-unit.ts'

export const limitEntryFields = [
  'characteristic',
  'faceMaterial',
  'upper',
  'unit',
  'withinS',
  'volumeAtMostL',
  'startAtLeast',
  'startUnit',
  'asWritten',
  'basis',
  'source',
  'leaveOut',
] as const

/** A limit as a form shows it, every part a text. */
export type LimitEntry = Readonly<Record<(typeof limitEntryFields)[number], string>>

export const blankLimitEntry: LimitEntry = {
  characteristic: '',
  faceMaterial: '',
  upper: '',
  unit: '',
  withinS: '',
  volumeAtMostL: '',
  startAtLeast: '',
  startUnit: '',
  asWritten: '',
  basis: '',
  source: '',
  leaveOut: '',
}

const storedUnit: Readonly<Record<Characteristic, LimitUnit>> = {
  flatness: 'um',
  'static-drop': 'kPa',
  'static-leak-rate': 'pa-m3-per-s',
}

/**
 * A limit as an entry that reads back as exactly the same limit: in helium bands where it is a
 * count of quarter bands, else in the unit it is stored in, with every digit.
 */
export function limitEntry(limit: NewLimit): LimitEntry {
  const bands = quarterBands(limit)
  const { withinS, volumeAtMostL, startAtLeastKPaGauge } = limit
  return {
    ...blankLimitEntry,
    characteristic: limit.characteristic,
    faceMaterial: limit.faceMaterial ?? '',
    upper: plainText(bands ?? limit.upper),
    unit: bands === undefined ? storedUnit[limit.characteristic] : 'helium-bands',
    withinS: withinS === null ? '' : plainText(withinS),
    volumeAtMostL: volumeAtMostL === null ? '' : plainText(volumeAtMostL),
    startAtLeast: startAtLeastKPaGauge === null ? '' : plainText(startAtLeastKPaGauge),
    startUnit: startAtLeastKPaGauge === null ? '' : 'kPa',
    asWritten: limit.asWritten,
    basis: limit.basis,
    source: limit.source,
  }
}

function quarterBands({ characteristic, upper }: NewLimit): number | undefined {
  if (characteristic !== 'flatness' || upper > 100) return undefined
  const { wavelengthNm } = lamps.helium
  const bands = Math.round(heightToBands({ heightUm: upper, wavelengthNm }) * 4) / 4
  return limitUnitMeaning['helium-bands'].toStored(bands) === upper ? bands : undefined
}

/** Every digit, and no power of ten: a form must read it back. */
function plainText(value: number): string {
  const text = String(value)
  if (!text.includes('e')) return text
  return value.toLocaleString('en', { useGrouping: false, maximumSignificantDigits: 17 })
}
