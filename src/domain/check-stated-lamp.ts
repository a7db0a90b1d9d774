import { lampIds, lamps } from '../science/optics/lamps.ts'
import { roundForPrint } from '../science/rounding/round-for-print.ts'
import type { Fields } from './fields.ts'
import type { Instrument } from './instrument.ts'
import { countedFlatnessBounds } from './parse-counted-flatness-request.ts'

/** A lamp and its wavelength may be named beside the instrument, and must then agree with it. */
export function checkStatedLamp(fields: Fields, lamp: Instrument | undefined): void {
  checkLamp(fields, lamp)
  checkWavelength(fields, lamp)
}

/** The lamp may be named beside its instrument; the two must then agree. */
function checkLamp(fields: Fields, lamp: Instrument | undefined): void {
  const before = fields.faults.length
  const lampId = fields.optionalChoice('lamp', lampIds)
  if (lampId === null || fields.faults.length > before || lamp?.kind !== 'lamp') return
  if (lamp.lampId !== lampId) {
    fields.fault('lamp', 'wrong-instrument', { kind: 'lamp', number: lamp.number })
  }
}

/** So may its wavelength, as the calculator takes it: the lamp's own, to within its half width. */
function checkWavelength(fields: Fields, lamp: Instrument | undefined): void {
  const before = fields.faults.length
  const wavelengthNm = fields.optionalDecimal('wavelengthNm', countedFlatnessBounds.wavelengthNm)
  const lampId = lampIds.find((id) => id === lamp?.lampId)
  if (wavelengthNm === null || fields.faults.length > before || lampId === undefined) return
  const { wavelengthNm: middleNm, halfWidthNm } = lamps[lampId]
  const [min, max] = [-1, 1].map((side) =>
    roundForPrint({ value: middleNm + side * halfWidthNm, decimals: 4 }),
  ) as [number, number]
  if (wavelengthNm < min) fields.fault('wavelengthNm', 'below', { min, max })
  else if (wavelengthNm > max) fields.fault('wavelengthNm', 'above', { min, max })
}
