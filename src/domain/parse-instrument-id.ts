import { checkLabel } from './check-label.ts'
import type { Fields } from './fields.ts'
import type { Instrument, InstrumentKind } from './instrument.ts'
import type { UseException } from './use-exception.ts'

export const idBounds = { min: 1, max: Number.MAX_SAFE_INTEGER } as const

type Asked = {
  readonly kind: InstrumentKind
  readonly instruments: readonly Instrument[]
  /** Calendar days of use and of recording. */
  readonly day: string
  readonly recordedOn: string
  /** Of the order; none where absent. */
  readonly exceptions?: readonly UseException[] | undefined
}

/**
 * Reads the instrument that a field names. A wrong kind is refused; so is one that is withdrawn,
 * overdue, was left beyond its tolerance or never was calibrated, unless an inspector allowed an
 * exception for this order. Its range is asked by `checkRange`, once what it showed is read.
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
  } else checkLabel(fields, name, { instrument, ...asked })
  return instrument
}
