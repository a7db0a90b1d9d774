import { firstRecordedAt } from './first-recorded-at.ts'
import type { ReadingCondition } from './flatness.ts'
import type { LapCycle } from './lap-cycle.ts'
import { type PlacedCycle, placedCycles } from './placed-cycles.ts'

type ReadOnFace = {
  readonly id: number
  readonly componentId: number | null
  readonly condition: ReadingCondition
  readonly replacesId: number | null
  readonly recordedAt: string
}

/**
 * The cycle after which something was read on a face: the newest of that face and order that was
 * written down before the reading, or at the same instant. Null where there was none, and for what
 * was read as found: it tells of the face as it came, whenever it was written down.
 *
 * It is derived, not stored: what a correction replaced keeps its place in time, and readings of
 * before there was a log are tied as well as later ones.
 * @param reading among `readings`, which are all of its kind and order, replaced ones too
 */
export function cycleBefore<T extends ReadOnFace>(
  reading: T,
  { readings, cycles }: { readonly readings: readonly T[]; readonly cycles: readonly LapCycle[] },
): PlacedCycle | null {
  if (reading.componentId === null || reading.condition === 'as-found') return null
  const readAt = firstRecordedAt(readings, reading)
  const before = placedCycles(cycles, reading.componentId).filter((one) => one.lappedAt <= readAt)
  return before.at(-1) ?? null
}
