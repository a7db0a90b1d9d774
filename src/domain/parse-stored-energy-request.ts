import { type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'

/** What the calculator of stored energy is asked. */
export type StoredEnergyRequest = {
  readonly pressureKPaAbs: number
  readonly volumeL: number
  readonly gamma: number
  readonly ambientKPaAbs: number
}

export const storedEnergyFields = ['pressureKPaAbs', 'volumeL', 'gamma', 'ambientKPaAbs'] as const

export const storedEnergyBounds = {
  pressureKPaAbs: { min: 0, max: 1e6 },
  volumeL: { min: 0, max: 1e9 },
  gamma: { min: 1.001, max: 2 },
  ambientKPaAbs: { min: 0.001, max: 10_000 },
} as const

/** Reads a request for stored energy; air at one atmosphere where nothing else is stated. */
export function parseStoredEnergyRequest(input: Input): Parsed<StoredEnergyRequest> {
  const fields = openFields(input)
  fields.only(...storedEnergyFields)
  const b = storedEnergyBounds
  return fields.finish({
    pressureKPaAbs: fields.decimal('pressureKPaAbs', b.pressureKPaAbs),
    volumeL: fields.decimal('volumeL', b.volumeL),
    gamma: fields.optionalDecimal('gamma', b.gamma) ?? 1.4,
    ambientKPaAbs: fields.optionalDecimal('ambientKPaAbs', b.ambientKPaAbs) ?? 101.325,
  })
}
