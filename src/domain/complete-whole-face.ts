import { lampIds } from '../science/optics/lamps.ts'
import type { CompleteFlatness } from './complete-flatness-reading.ts'
import { computeWholeFace, type FaceRead } from './compute-whole-face.ts'
import { flatAccuracy } from './flat-accuracy.ts'
import type { FlatnessContext } from './parse-flatness-reading.ts'
import type { NewWholeFaceReading } from './parse-whole-face-reading.ts'
import { faceKinds } from './seal.ts'
import { useOf } from './use-of.ts'
import { wholeFacePattern } from './whole-face.ts'

/**
 * Adds to what was asked of a photograph its face, the instruments as they stood on the day, and
 * its figures.
 * @throws RangeError where it was not parsed in this context
 */
export function completeWholeFace(
  asked: NewWholeFaceReading & { readonly workOrderId: number },
  read: FaceRead,
  context: FlatnessContext,
): CompleteFlatness {
  const component = context.components.find((one) => one.id === asked.componentId)
  const faceKind = faceKinds.find((kind) => kind === component?.kind)
  const lamp = context.instruments.find((one) => one.id === asked.lampInstrumentId)
  const flat = context.instruments.find((one) => one.id === asked.flatInstrumentId)
  const lampId = lampIds.find((id) => id === lamp?.lampId)
  if (faceKind === undefined || lamp === undefined || flat === undefined || lampId === undefined) {
    throw new RangeError('completeWholeFace requires a face, a lamp and a flat of its context')
  }
  const { today, exceptions } = context
  const by = { day: today, recordedOn: today, exceptions }
  const { source: _1, outerDiameterMm: _2, innerDiameterMm: _3, ...given } = asked
  const instruments = { lampId, ...flatAccuracy(flat, today) }
  const { computed, wholeFace, viewingAngleDeg } = computeWholeFace(asked, read, instruments)
  return {
    ...given,
    ...computed,
    viewingAngleDeg,
    wholeFace,
    faceKind,
    pattern: wholeFacePattern,
    ringCentre: null,
    unreadableCause: null,
    directions: [],
    lamp: useOf(lamp, by),
    flat: useOf(flat, by),
  }
}
