import { checkRange } from './check-range.ts'
import type { Fields } from './fields.ts'
import { fittingKinds } from './measured-family.ts'
import { idBounds, parseInstrumentId } from './parse-instrument-id.ts'
import type { StripContext } from './strip-context.ts'
import { valueReadings } from './value-readings.ts'
import type { TypedMm } from './wear-track.ts'

/**
 * Reads what lengths were read with, where an instrument of the list was used: by the rules of any
 * reading, so that an overdue one, or one that does not reach so far, is refused. A rule or a
 * caliper that is not in the list is left out.
 * @returns its id, null where none is named
 */
export function parseLengthInstrument(
  fields: Fields,
  lengths: readonly TypedMm[],
  context: StripContext,
): number | null {
  const name = 'instrumentId'
  if (!fields.isGiven(name)) {
    // A list or an object is no id: say so, instead of leaving it out.
    return fields.optionalWhole(name, idBounds)
  }
  const { instruments, exceptions, today: day } = context
  const id = fields.typed(name).trim()
  const named = instruments.find((one) => String(one.id) === id)
  const kind = fittingKinds.height.find((one) => one === named?.kind) ?? 'micrometer'
  const asked = { kind, instruments, exceptions, day, recordedOn: day }
  const instrument = parseInstrumentId(fields, name, asked)
  const readings = valueReadings(lengths.map(({ mm, typed }) => ({ um: mm * 1000, typed })))
  checkRange(fields, name, { instrument, readings, day, recordedOn: day, exceptions })
  return instrument?.id ?? null
}
