import { kPaToPressure } from '../science/units/kpa-to-pressure.ts'
import { pressureToKPa } from '../science/units/pressure-to-kpa.ts'
import type { Bounds } from './fields.ts'
import { plainText } from './plain-text.ts'

/** The units in which pressures of limits are written; the first is the stored one. */
export const pressureUnits = ['kPa', 'bar', 'psi'] as const
export type LimitPressureUnit = (typeof pressureUnits)[number]

/** What can be meant; the window catches slips of the unit, such as 1.7 written for bar as kPa. */
export const startBounds: Readonly<Record<LimitPressureUnit, Bounds>> = {
  kPa: { min: 5, max: 10_000 },
  bar: { min: 0.05, max: 100 },
  psi: { min: 0.75, max: 1450 },
}

/** Sealed pressures a limit may be written for: from vacuum to what presses hold. */
export const sealedBounds: Readonly<Record<LimitPressureUnit, Bounds>> = {
  kPa: { min: -101.325, max: 100_000 },
  bar: { min: -1.01325, max: 1000 },
  psi: { min: -14.7, max: 14_500 },
}

export type TypedPressure = { readonly value: string; readonly unit: LimitPressureUnit }

/** As somebody would have typed it: in bar where that is short and reads back exactly, else kPa. */
export function typedPressure(kPa: number): TypedPressure {
  const bar = plainText(kPaToPressure(kPa, 'bar'))
  const isShort = bar.length <= 5 && pressureToKPa(Number(bar), 'bar') === kPa
  return isShort ? { value: bar, unit: 'bar' } : { value: plainText(kPa), unit: 'kPa' }
}
