import { type LampId, lampIds } from '../science/optics/lamps.ts'
import { computeFlatness } from './compute-flatness.ts'
import { flatAccuracy } from './flat-accuracy.ts'
import type { FlatnessReading, NewFlatnessReading } from './flatness.ts'
import type { Instrument } from './instrument.ts'
import type { FlatnessContext } from './parse-flatness-reading.ts'
import { faceKinds } from './seal.ts'
import { useOf } from './use-of.ts'

/** A reading with all that is computed, before the store gives it an id, a name and a time. */
export type CompleteFlatness = Omit<
  FlatnessReading,
  'id' | 'sees' | 'recordedById' | 'recordedByName' | 'recordedAt' | 'replacedById'
>

/**
 * Adds to a parsed reading its face, the instruments as they stood on the day, and its figures.
 * @throws RangeError where the reading was not parsed in this context
 */
export function completeFlatnessReading(
  reading: NewFlatnessReading,
  context: FlatnessContext,
): CompleteFlatness {
  const component = context.components.find((one) => one.id === reading.componentId)
  const faceKind = faceKinds.find((kind) => kind === component?.kind)
  const lamp = context.instruments.find((one) => one.id === reading.lampInstrumentId)
  const flat = context.instruments.find((one) => one.id === reading.flatInstrumentId)
  if (faceKind === undefined || lamp === undefined || flat === undefined) {
    throw new RangeError(
      'completeFlatnessReading requires a face, a lamp and a flat of its context',
    )
  }
  const { today, exceptions } = context
  const by = { day: today, recordedOn: today, exceptions }
  return {
    ...reading,
    faceKind,
    wholeFace: null,
    ...computeFlatness(reading, { lampId: lampIdOf(lamp), ...flatAccuracy(flat, context.today) }),
    lamp: useOf(lamp, by),
    flat: useOf(flat, by),
  }
}

function lampIdOf(lamp: Instrument): LampId {
  const lampId = lampIds.find((id) => id === lamp.lampId)
  if (lampId !== undefined) return lampId
  throw new RangeError(`completeFlatnessReading requires a lamp of the table, got ${lamp.lampId}`)
}
