import type { Fields } from './fields.ts'
import { standardBarometerKPa } from './parse-static-test-common.ts'
import {
  type PressureReference,
  type PressureUnit,
  pressureReferences,
  pressureUnits,
  staticTestBounds,
} from './static-test.ts'

/** In what a gauge reads. */
export type Scale = {
  readonly unit: PressureUnit
  readonly reference: PressureReference
  readonly barometerKPa: number
}

/** `scale` is null where one of its fields is faulty; `asTyped` stands in for the record. */
export type GaugeScale = { readonly scale: Scale | null; readonly asTyped: Scale }

/** Reads unit, reference and barometer of a gauge. */
export function parseGaugeScale(fields: Fields): GaugeScale {
  const before = fields.faults.length
  const asTyped = {
    unit: fields.choice('pressureUnit', pressureUnits),
    reference: fields.choice('pressureReference', pressureReferences),
    barometerKPa:
      fields.optionalDecimal('barometerKPa', staticTestBounds.barometerKPa) ?? standardBarometerKPa,
  }
  return { scale: fields.faults.length > before ? null : asTyped, asTyped }
}
