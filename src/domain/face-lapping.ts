import { atMost } from '../science/acceptance/at-most.ts'
import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import type { LapCycle } from './lap-cycle.ts'
import { type FaceHeight, heightNow, type LapStep, lapSteps, ownStockUm } from './lap-steps.ts'
import { type Component, type FaceKind, faceKinds } from './seal.ts'

/** The lapping of one face, over its order and the orders of its seal before it. */
export type FaceLapping = {
  readonly component: Component
  readonly kind: FaceKind
  /** Of this order, first cycle first. */
  readonly steps: readonly LapStep[]
  /** Of the same ring in earlier orders. */
  readonly earlierCount: number
  /**
   * How many times the ring was lapped anew: an order counts once, however many cycles it took,
   * and not at all where the ring was fitted new in it, or only matted.
   */
  readonly relapCount: number
  /** Over the cycles of this ring, but for matting, of which is known what they took off. */
  readonly meanStock: { readonly um: number; readonly cycleCount: number } | null
  readonly height: FaceHeight | null
  readonly minimumMm: number | null
  readonly standing: NoseStanding
}

/** Against the smallest height that is allowed: `unknown` without a height or a minimum. */
export type NoseStanding = 'kept' | 'below' | 'unknown'

export type LappingEvidence = Pick<
  Evidence,
  'seal' | 'lapCycles' | 'earlierLapCycles' | 'measuredValues'
>

/** The faces of a seal, rotating face first, each with its lapping. */
export function faceLappings(evidence: LappingEvidence): readonly FaceLapping[] {
  return faceKinds.flatMap((kind) =>
    evidence.seal.components
      .filter((one) => one.kind === kind)
      .map((component) => faceLapping(evidence, component, kind)),
  )
}

function faceLapping(evidence: LappingEvidence, component: Component, kind: FaceKind): FaceLapping {
  const { id, minimumNoseHeightMm: minimumMm } = component
  const steps = lapSteps(evidence, id)
  const earlier = currentOnly(evidence.earlierLapCycles).filter((one) => one.componentId === id)
  const cycles = sinceNew([...earlier, ...steps.map((one) => one.cycle)])
  const height = heightNow(evidence, id)
  return {
    component,
    kind,
    steps,
    earlierCount: cycles.filter((one) => earlier.includes(one)).length,
    relapCount: relapsIn(cycles),
    meanStock: meanStock(cycles, steps),
    height,
    minimumMm,
    standing: noseStanding(height?.mm ?? null, minimumMm),
  }
}

/** Compares a height with the smallest that is allowed. */
export function noseStanding(mm: number | null, minimumMm: number | null): NoseStanding {
  if (mm === null || minimumMm === null) return 'unknown'
  return atMost({ value: minimumMm, limit: mm }) ? 'kept' : 'below'
}

/** From the newest ring on. */
function sinceNew(cycles: readonly LapCycle[]): readonly LapCycle[] {
  const newest = cycles.findLastIndex((one) => one.isNewRing)
  return newest === -1 ? cycles : cycles.slice(newest)
}

function relapsIn(cycles: readonly LapCycle[]): number {
  const fittedIn = cycles.find((one) => one.isNewRing)?.workOrderId
  const orders = new Set(cycles.filter(isNoMatting).map((one) => one.workOrderId))
  return [...orders].filter((id) => id !== fittedIn).length
}

/** Matting takes off next to nothing, and is no lap to be expected again. */
function isNoMatting({ purpose }: LapCycle): boolean {
  return purpose !== 'matt'
}

function meanStock(
  cycles: readonly LapCycle[],
  steps: readonly LapStep[],
): FaceLapping['meanStock'] {
  const stocks = cycles
    .filter(isNoMatting)
    .map((cycle) => steps.find((one) => one.cycle === cycle)?.removedUm ?? ownStockUm(cycle))
    .filter((um) => um !== null)
  if (stocks.length === 0) return null
  const um = stocks.reduce((sum, one) => sum + one, 0) / stocks.length
  return { um, cycleCount: stocks.length }
}
