import { currentOnly } from './current-only.ts'
import { firstRecordedAt } from './first-recorded-at.ts'
import type { LapCycle } from './lap-cycle.ts'

/** A cycle that stands, with its place among those of its face. */
export type PlacedCycle = {
  readonly cycle: LapCycle
  /** When it was first written down. */
  readonly lappedAt: string
  /** 1 for the first of its face in the order. */
  readonly number: number
}

/** The cycles of one face of one order that stand, in the order in which they were lapped. */
export function placedCycles(
  cycles: readonly LapCycle[],
  componentId: number,
): readonly PlacedCycle[] {
  return currentOnly(cycles)
    .filter((one) => one.componentId === componentId)
    .map((cycle) => ({ cycle, lappedAt: firstRecordedAt(cycles, cycle) }))
    .sort((a, b) => compare(a.lappedAt, b.lappedAt) || a.cycle.id - b.cycle.id)
    .map((placed, index) => ({ ...placed, number: index + 1 }))
}

/** Instants are kept in UTC, so their texts sort as they do. */
function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
