import { calibrationStatus } from './calibration-status.ts'
import type { Fields } from './fields.ts'
import type { Instrument, InstrumentKind } from './instrument.ts'

export const idBounds = { min: 1, max: Number.MAX_SAFE_INTEGER } as const

type Asked = {
  readonly kind: InstrumentKind
  readonly instruments: readonly Instrument[]
  /** The day of use. */
  readonly day: string
}

/**
 * Reads the instrument that a field names. A wrong kind and a withdrawn one are refused; one that
 * is out of calibration is not: its status is recorded and must be acknowledged at release.
 */
export function parseInstrumentId(
  fields: Fields,
  name: string,
  asked: Asked,
): Instrument | undefined {
  const before = fields.faults.length
  const id = fields.whole(name, idBounds)
  if (fields.faults.length > before) return undefined
  const instrument = asked.instruments.find((one) => one.id === id)
  if (instrument === undefined) fields.fault(name, 'not-known')
  else if (instrument.kind !== asked.kind) {
    fields.fault(name, 'wrong-instrument', { kind: asked.kind, number: instrument.number })
  } else if (calibrationStatus(instrument, asked.day) === 'withdrawn') {
    fields.fault(name, 'withdrawn-instrument', { number: instrument.number })
  }
  return instrument
}
