import { type LampId, lampIds, lamps } from '../science/optics/lamps.ts'
import type { Bounds, Fields } from './fields.ts'

/** The light that bands are seen by: a lamp of the table, or its wavelength alone. */
export type AskedLamp = {
  readonly lampId: LampId | null
  readonly wavelengthNm: number | null
}

/** Reads `lamp` or `wavelengthNm`: one of the two, and not both. */
export function parseLamp(fields: Fields, wavelengthNm: Bounds): AskedLamp {
  if (fields.isGiven('lamp') === fields.isGiven('wavelengthNm')) {
    fields.fault('lamp', 'one-of-two', { one: 'lamp', other: 'wavelengthNm' })
  }
  return {
    lampId: fields.optionalChoice('lamp', lampIds),
    wavelengthNm: fields.optionalDecimal('wavelengthNm', wavelengthNm),
  }
}

/** Wavelength in nm, in air. @throws RangeError where neither is given */
export function wavelengthOf({ lampId, wavelengthNm }: AskedLamp): number {
  const found = lampId === null ? wavelengthNm : lamps[lampId].wavelengthNm
  if (found === null) throw new RangeError('wavelengthOf requires a lamp')
  return found
}
