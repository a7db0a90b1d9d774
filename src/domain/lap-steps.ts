import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import { firstRecordedAt } from './first-recorded-at.ts'
import type { LapCycle } from './lap-cycle.ts'
import type { MeasuredValue } from './measured-value.ts'
import { type PlacedCycle, placedCycles } from './placed-cycles.ts'

/** How high a face stands, as far as the record says. */
export type FaceHeight = {
  readonly mm: number
  /** Read here, and not reckoned from an earlier height and the stock removed. */
  readonly isRead: boolean
  /** Cycles since it was read of which nobody wrote what they took off: then it is at most this. */
  readonly unknownCount: number
}

/** A cycle with what is known of the face before and after it. */
export type LapStep = PlacedCycle & {
  readonly before: FaceHeight | null
  readonly after: FaceHeight | null
  /** From both heights where they are known, else as it was stated. */
  readonly removedUm: number | null
}

export type LapRecords = Pick<Evidence, 'lapCycles' | 'measuredValues'>

/**
 * The cycles of a face, each with the heights around it. A height is taken from the log, or from a
 * face height read with an instrument; between them it is reckoned. The height on the seal's record
 * is never taken: nobody knows what wear has left of it.
 */
export function lapSteps(records: LapRecords, componentId: number): readonly LapStep[] {
  const placed = placedCycles(records.lapCycles, componentId)
  const read = heightsRead(records.measuredValues, componentId)
  const steps: LapStep[] = []
  let height: FaceHeight | null = null
  let from = ''
  for (const one of placed) {
    const known = newestOf(read, from, one.lappedAt)
    if (known !== undefined) height = readHeight(known)
    const step = stepOf(one, height)
    height = step.after
    from = one.lappedAt
    steps.push(step)
  }
  return steps
}

/** How high the face stands now: after its last cycle, or as it was read since. */
export function heightNow(records: LapRecords, componentId: number): FaceHeight | null {
  const last = lapSteps(records, componentId).at(-1)
  const read = heightsRead(records.measuredValues, componentId)
  const since = read.filter((one) => last === undefined || one.at >= last.lappedAt).at(-1)
  return since === undefined ? (last?.after ?? null) : readHeight(since.mm)
}

/** What a cycle took off by its own words alone. */
export function ownStockUm(
  cycle: Pick<LapCycle, 'heightBeforeMm' | 'heightAfterMm' | 'stockUm'>,
): number | null {
  const { heightBeforeMm: before, heightAfterMm: after, stockUm } = cycle
  return before !== null && after !== null ? fallUm(before, after) : stockUm
}

function stepOf(placed: PlacedCycle, carried: FaceHeight | null): LapStep {
  const { cycle } = placed
  const inherited = cycle.isNewRing ? null : carried
  const { heightBeforeMm, heightAfterMm } = cycle
  const before = heightBeforeMm === null ? inherited : readHeight(heightBeforeMm)
  const removedUm = removedBy(cycle, before)
  const after = heightAfterMm === null ? fallen(before, removedUm) : readHeight(heightAfterMm)
  return { ...placed, before, after, removedUm }
}

function removedBy(cycle: LapCycle, before: FaceHeight | null): number | null {
  const { heightAfterMm } = cycle
  const isExact = before !== null && before.unknownCount === 0
  // A height read above the one before it says nothing of stock: one of the two is mistaken.
  const isFall = isExact && heightAfterMm !== null && heightAfterMm <= before.mm
  return isFall ? fallUm(before.mm, heightAfterMm) : ownStockUm(cycle)
}

function fallen(before: FaceHeight | null, removedUm: number | null): FaceHeight | null {
  if (before === null) return null
  const { mm, unknownCount } = before
  return removedUm === null
    ? { mm, isRead: false, unknownCount: unknownCount + 1 }
    : { mm: mm - removedUm / 1000, isRead: false, unknownCount }
}

function readHeight(mm: number): FaceHeight {
  return { mm, isRead: true, unknownCount: 0 }
}

/** In whole nanometres, so that 2.81 mm less 2.8 mm are 10 µm. */
function fallUm(beforeMm: number, afterMm: number): number {
  return Math.round((beforeMm - afterMm) * 1e6) / 1e3
}

type HeightRead = { readonly mm: number; readonly at: string }

/** Face heights read with an instrument, oldest first; what was found stands before any cycle. */
function heightsRead(values: readonly MeasuredValue[], componentId: number): readonly HeightRead[] {
  return currentOnly(values)
    .filter((one) => one.characteristic === 'face-height' && one.componentId === componentId)
    .map((one) => ({
      mm: one.valueUm / 1000,
      at: one.condition === 'as-found' ? '' : firstRecordedAt(values, one),
    }))
    .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))
}

/** The newest that was read since the last cycle, at its instant too, and before this one. */
function newestOf(read: readonly HeightRead[], from: string, until: string): number | undefined {
  return read.filter((one) => one.at >= from && one.at < until).at(-1)?.mm
}
