import type { Figure } from './certified-results.ts'
import type { Evidence } from './evidence.ts'
import { type FaceLapping, faceLappings, type NoseStanding } from './face-lapping.ts'
import { figure, optionalFigure } from './figure.ts'
import { type FinishOrder, finishOrder } from './finish-order.ts'
import type { LapStep } from './lap-steps.ts'
import type { FaceKind } from './seal.ts'

/** What the lapping log says of one face: heights as noted, without uncertainty. */
export type CertifiedLapping = {
  readonly face: FaceKind
  /** Cycles of this order, and of earlier ones on the same ring. */
  readonly cycleCount: number
  readonly earlierCycleCount: number
  readonly relapCount: number
  readonly isNewRing: boolean
  /** Before the first cycle, and as it leaves; null where nobody wrote one. */
  readonly heightBeforeMm: Figure | null
  readonly heightMm: Figure | null
  /** False: reckoned from an earlier height and the stock. */
  readonly isHeightRead: boolean
  /** Cycles of unknown stock behind the height: where there are any, it is at most so high. */
  readonly unknownStockCount: number
  /** Null where it can't be told for every cycle. */
  readonly removedUm: Figure | null
  readonly minimumMm: Figure | null
  /** Above the smallest height allowed; negative below it. */
  readonly marginMm: Figure | null
  readonly standing: NoseStanding
  /** Absent for a face that was not matted, and in older records. */
  readonly finish?: FinishOrder
  readonly corrections: readonly {
    readonly reason: string
    readonly byName: string
    readonly at: string
  }[]
}

/** The faces of an order that were lapped, rotating face first. */
export function certifiedLappings(evidence: Evidence): readonly CertifiedLapping[] {
  return faceLappings(evidence)
    .filter((one) => one.steps.length > 0)
    .map((one) => certifiedLapping(one, evidence))
}

const lengthMm = { decimals: 3 } as const
const stockUm = { decimals: 1 } as const

function certifiedLapping(lapping: FaceLapping, evidence: Evidence): CertifiedLapping {
  const { height, minimumMm, component } = lapping
  const steps = ofThisRing(lapping.steps)
  const finish = finishOrder(evidence, component.id)
  const margin = height === null || minimumMm === null ? null : height.mm - minimumMm
  return {
    face: lapping.kind,
    cycleCount: lapping.steps.length,
    earlierCycleCount: lapping.earlierCount,
    relapCount: lapping.relapCount,
    isNewRing: steps[0]?.cycle.isNewRing === true,
    heightBeforeMm: optionalFigure(steps[0]?.before?.mm ?? null, lengthMm),
    heightMm: optionalFigure(height?.mm ?? null, lengthMm),
    isHeightRead: height?.isRead === true,
    unknownStockCount: height?.unknownCount ?? 0,
    removedUm: optionalFigure(removedInAll(steps, height), stockUm),
    minimumMm: optionalFigure(minimumMm, 'as-entered'),
    marginMm: margin === null ? null : figure(margin, lengthMm),
    standing: lapping.standing,
    ...(finish === null ? {} : { finish }),
    corrections: evidence.lapCycles
      .filter((one) => one.componentId === component.id && one.replacesId !== null)
      .map((one) => ({ reason: one.reason, byName: one.recordedByName, at: one.recordedAt })),
  }
}

/** From the newest ring on: what was taken off another one says nothing of this one. */
function ofThisRing(steps: readonly LapStep[]): readonly LapStep[] {
  const fitted = steps.findLastIndex((one) => one.cycle.isNewRing)
  return fitted === -1 ? steps : steps.slice(fitted)
}

/** From the first and the last height where both are certain, else from every cycle's stock. */
function removedInAll(steps: readonly LapStep[], height: FaceLapping['height']): number | null {
  const before = steps[0]?.before ?? null
  const isCertain = before?.unknownCount === 0 && height?.unknownCount === 0
  if (isCertain && height.mm <= before.mm) return (before.mm - height.mm) * 1000
  const stocks = steps.map((one) => one.removedUm).filter((um) => um !== null)
  return stocks.length === steps.length ? stocks.reduce((sum, one) => sum + one, 0) : null
}
