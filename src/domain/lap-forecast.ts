import {
  type FaceLapping,
  faceLappings,
  type LappingEvidence,
  noseStanding,
} from './face-lapping.ts'
import type { LapCycle, NewLapCycle } from './lap-cycle.ts'
import type { LapStep } from './lap-steps.ts'

/** By what it is reckoned how much a cycle will take off. */
export type ExpectedStock = {
  readonly um: number
  readonly by: 'planned' | 'mean'
  /** Behind the mean; 0 for a plan. */
  readonly cycleCount: number
}

export type Outlook = {
  /** Null where no height is known. */
  readonly mm: number | null
  readonly standing: FaceLapping['standing']
}

/** What a cycle that is being entered does to its face, and what a further one would do. */
export type LapForecast = {
  readonly lapping: FaceLapping
  readonly step: LapStep
  readonly expected: ExpectedStock | null
  /** After this cycle: as entered, else as expected. */
  readonly after: Outlook & { readonly isExpected: boolean; readonly isAtMost: boolean }
  /** After one more of the same; null without a stock to expect. */
  readonly next: Outlook | null
}

export type LapDraft = Omit<NewLapCycle, 'workOrderId' | 'note' | 'reason' | 'grit' | 'plate'>

/**
 * Reckons a draft as if it stood in the record, at the place of what it corrects where it does.
 * @throws RangeError where its face is none of the seal
 */
export function lapForecast(draft: LapDraft, evidence: LappingEvidence): LapForecast {
  const lapping = faceLappings(drafted(evidence, draft)).find(
    (one) => one.component.id === draft.componentId,
  )
  const step = lapping?.steps.find((one) => one.cycle.id === draftId)
  if (lapping === undefined || step === undefined) {
    throw new RangeError(`lapForecast requires a face of the seal, got id ${draft.componentId}`)
  }
  const expected = expectedStock(draft, lapping)
  const after = afterOf(step, expected, lapping.minimumMm)
  return { lapping, step, expected, after, next: nextOf(after, expected, lapping.minimumMm) }
}

/** Above every id of the store: the draft is the last that was written down. */
const draftId = Number.MAX_SAFE_INTEGER
const draftAt = '9999'

function drafted(evidence: LappingEvidence, draft: LapDraft): LappingEvidence {
  const cycle: LapCycle = {
    ...draft,
    id: draftId,
    // Of no stored order, as the draft is of this one alone: a number that none of them has.
    workOrderId: evidence.lapCycles[0]?.workOrderId ?? -1,
    plate: '',
    grit: '',
    note: '',
    reason: '',
    recordedById: 0,
    recordedByName: '',
    recordedAt: draftAt,
    replacedById: null,
  }
  const others = evidence.lapCycles.map((one) =>
    one.id === draft.replacesId ? { ...one, replacedById: draftId } : one,
  )
  return { ...evidence, lapCycles: [...others, cycle] }
}

function expectedStock(draft: LapDraft, { meanStock }: FaceLapping): ExpectedStock | null {
  const { plannedStockUm } = draft
  if (plannedStockUm !== null) return { um: plannedStockUm, by: 'planned', cycleCount: 0 }
  return meanStock === null ? null : { ...meanStock, by: 'mean' }
}

function afterOf(
  { before, after, removedUm }: LapStep,
  expected: ExpectedStock | null,
  minimumMm: number | null,
): LapForecast['after'] {
  const isKnown = after?.isRead === true || removedUm !== null
  const isExpected = !isKnown && expected !== null
  const mm = isExpected && before !== null ? before.mm - expected.um / 1000 : (after?.mm ?? null)
  const unknownCount = (isExpected ? before : after)?.unknownCount ?? 0
  return { mm, standing: noseStanding(mm, minimumMm), isExpected, isAtMost: unknownCount > 0 }
}

function nextOf(
  { mm }: Outlook,
  expected: ExpectedStock | null,
  minimumMm: number | null,
): Outlook | null {
  if (mm === null || expected === null) return null
  const next = mm - expected.um / 1000
  return { mm: next, standing: noseStanding(next, minimumMm) }
}
