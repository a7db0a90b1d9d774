import { type LeakUnit, leakUnits } from '../science/units/leak-unit.ts'
import { type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'

/** What the converter of leaks is asked. */
export type LeakConvertRequest = {
  readonly value: number
  readonly from: LeakUnit
  readonly to: LeakUnit
  readonly referenceTemperatureC: number
}

export const leakConvertFields = ['value', 'from', 'to', 'referenceTemperatureC'] as const

export const leakConvertBounds = {
  value: { min: -1e12, max: 1e12 },
  temperatureC: { min: -270, max: 2000 },
} as const

/** Reads a request for a leak in another unit; 20 °C where no temperature is stated. */
export function parseLeakConvertRequest(input: Input): Parsed<LeakConvertRequest> {
  const fields = openFields(input)
  fields.only(...leakConvertFields)
  const { value, temperatureC } = leakConvertBounds
  return fields.finish({
    value: fields.decimal('value', value),
    from: fields.choice('from', leakUnits),
    to: fields.choice('to', leakUnits),
    referenceTemperatureC: fields.optionalDecimal('referenceTemperatureC', temperatureC) ?? 20,
  })
}
