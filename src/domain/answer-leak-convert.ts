import { convertLeak } from '../science/units/convert-leak.ts'
import { leakUnitFactors } from '../science/units/leak-unit.ts'
import { methods } from './methods.ts'
import type { LeakConvertRequest } from './parse-leak-convert-request.ts'

/** What a conversion rests on: an ideal gas, a temperature that a unit leaves open, air. */
export const leakAssumptions = ['ideal-gas', 'at-reference-temperature', 'as-air'] as const
export type LeakAssumption = (typeof leakAssumptions)[number]

/** A leak in another unit, and what that assumes. No record is made. */
export function answerLeakConvert(request: LeakConvertRequest) {
  const { value, from, to, referenceTemperatureC } = request
  const factors = [leakUnitFactors[from], leakUnitFactors[to]]
  const isOpen = factors.some((one) => 'paM3PerS' in one && one.ofTemperatureK === null)
  const isAir = [from, to].includes('g-per-h-air')
  const assumes: readonly LeakAssumption[] = [
    'ideal-gas',
    ...(isOpen ? (['at-reference-temperature'] as const) : []),
    ...(isAir ? (['as-air'] as const) : []),
  ]
  return {
    value: convertLeak({ value, from, to, referenceTemperatureC }),
    unit: to,
    referenceTemperatureC,
    assumes,
    method: methods.leakConvert,
  }
}
