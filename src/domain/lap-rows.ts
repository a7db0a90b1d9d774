import type { Evidence } from './evidence.ts'
import { faceLappings, type NoseStanding, noseStanding } from './face-lapping.ts'
import type { LapCycle } from './lap-cycle.ts'
import type { LapStep } from './lap-steps.ts'
import type { FaceKind } from './seal.ts'

/** A cycle as the order's page lists it; one that was replaced has no step. */
export type LapRow = {
  readonly cycle: LapCycle
  readonly face: FaceKind
  readonly step: LapStep | null
  readonly replacedBy: LapCycle | null
  /** What it left above the smallest height allowed; negative below it, null where unknown. */
  readonly marginMm: number | null
  readonly standing: NoseStanding
}

/** Every cycle of an order, replaced ones too, in the order in which they were written down. */
export function lapRows(evidence: Evidence): readonly LapRow[] {
  const lappings = faceLappings(evidence)
  return evidence.lapCycles.flatMap((cycle) => {
    const lapping = lappings.find((one) => one.component.id === cycle.componentId)
    if (lapping === undefined) return []
    const step = lapping.steps.find((one) => one.cycle.id === cycle.id) ?? null
    const mm = step?.after?.mm ?? null
    const { minimumMm, kind } = lapping
    return [
      {
        cycle,
        face: kind,
        step,
        replacedBy: evidence.lapCycles.find((one) => one.id === cycle.replacedById) ?? null,
        marginMm: mm === null || minimumMm === null ? null : mm - minimumMm,
        standing: noseStanding(mm, minimumMm),
      },
    ]
  })
}
