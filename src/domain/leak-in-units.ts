import { convertLeak } from '../science/units/convert-leak.ts'
import { type LeakUnit, leakUnits } from '../science/units/leak-unit.ts'

export type { LeakUnit } from '../science/units/leak-unit.ts'

/** A leak of gas at its reference temperature in every unit of the trade. */
export function leakInUnits(leak: {
  readonly leakPaM3PerS: number
  readonly referenceTemperatureC: number
}): readonly { readonly unit: LeakUnit; readonly value: number }[] {
  const { leakPaM3PerS: value, referenceTemperatureC } = leak
  return leakUnits.map((to) => ({
    unit: to,
    value: convertLeak({ value, from: 'Pa-m3-per-s', to, referenceTemperatureC }),
  }))
}
