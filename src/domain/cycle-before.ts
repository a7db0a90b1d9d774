import { cyclesBefore, type ReadOnFace } from './cycles-before.ts'
import type { LapCycle } from './lap-cycle.ts'
import type { PlacedCycle } from './placed-cycles.ts'

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
  return cyclesBefore(reading, { readings, cycles }).at(-1) ?? null
}
