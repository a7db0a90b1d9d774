import { combineWholeFaces } from './combine-whole-faces.ts'
import { combinedParts } from './combined-parts.ts'
import type { CompleteFlatness } from './complete-flatness-reading.ts'
import type { FlatnessReading } from './flatness.ts'
import { wholeFacePattern } from './whole-face.ts'

/**
 * The combination of some readings of an order, ready to be recorded: face, state and instruments
 * are those of its newest part, as they stood then.
 * @param asked of which combinationRefusal says nothing
 * @param readings of the order, oldest first
 */
export function completeCombination(
  asked: readonly FlatnessReading[],
  readings: readonly FlatnessReading[],
): CompleteFlatness {
  const parts = combinedParts(asked, readings)
  const newest = parts.at(-1)
  if (newest === undefined) throw new RangeError('completeCombination requires parts, got none')
  const { computed, wholeFace, viewingAngleDeg } = combineWholeFaces(parts)
  return {
    workOrderId: newest.workOrderId,
    componentId: newest.componentId,
    faceKind: newest.faceKind,
    condition: newest.condition,
    lampInstrumentId: newest.lampInstrumentId,
    flatInstrumentId: newest.flatInstrumentId,
    lamp: newest.lamp,
    flat: newest.flat,
    pattern: wholeFacePattern,
    ringCentre: null,
    unreadableCause: null,
    directions: [],
    soakMin: newest.soakMin,
    temperatureC: newest.temperatureC,
    budgetInput: newest.budgetInput,
    note: '',
    replacesId: null,
    reason: '',
    ...computed,
    viewingAngleDeg,
    wholeFace,
  }
}
