import { firstRecordedAt } from './first-recorded-at.ts'
import type { ReadingCondition } from './flatness.ts'
import type { LapCycle } from './lap-cycle.ts'
import { type PlacedCycle, placedCycles } from './placed-cycles.ts'

export type ReadOnFace = {
  readonly id: number
  readonly componentId: number | null
  readonly condition: ReadingCondition
  readonly replacesId: number | null
  readonly recordedAt: string
}

/**
 * The cycles of a face and order that came before something was read on it, in the order in which
 * they were lapped. None for what was read as found: it tells of the face as it came, whenever it
 * was written down.
 * @param reading among `readings`, which are all of its kind and order, replaced ones too
 */
export function cyclesBefore<T extends ReadOnFace>(
  reading: T,
  { readings, cycles }: { readonly readings: readonly T[]; readonly cycles: readonly LapCycle[] },
): readonly PlacedCycle[] {
  if (reading.componentId === null || reading.condition === 'as-found') return []
  const readAt = firstRecordedAt(readings, reading)
  return placedCycles(cycles, reading.componentId).filter((one) => one.lappedAt <= readAt)
}
