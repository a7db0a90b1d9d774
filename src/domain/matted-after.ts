import { firstRecordedAt } from './first-recorded-at.ts'
import type { FlatnessReading } from './flatness.ts'
import type { LapCycle } from './lap-cycle.ts'
import { placedCycles } from './placed-cycles.ts'

/**
 * When a face was matted after its flatness was read; null where its last cycle is no matting, or
 * was before the reading. A reading as found is older than any cycle of its order.
 * @param reading among `readings`, which are all of its order, replaced ones too
 */
export function mattedAfter(
  reading: FlatnessReading,
  {
    readings,
    cycles,
  }: { readonly readings: readonly FlatnessReading[]; readonly cycles: readonly LapCycle[] },
): string | null {
  const last = placedCycles(cycles, reading.componentId).at(-1)
  if (last?.cycle.purpose !== 'matt' || reading.condition === 'as-found') return null
  return last.lappedAt > firstRecordedAt(readings, reading) ? last.lappedAt : null
}
