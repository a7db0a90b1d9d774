import { belongsToFace } from './belongs-to-face.ts'
import { characteristics } from './characteristic.ts'
import { explainLimit, type LimitExplanation } from './explain-limit.ts'
import type { LimitCase } from './limit-case.ts'
import { limitCaseOf } from './limit-case-of.ts'
import type { LimitSet } from './limit-set.ts'
import { type Component, faceKinds, type Seal } from './seal.ts'
import type { WorkOrder } from './work-order.ts'

/** A face, or the machine and the seal as a whole, with every limit that applies and does not. */
export type ExplainedPart = {
  /** Null for the machine and the seal as a whole. */
  readonly component: Component | null
  readonly limitCase: LimitCase
  readonly explanations: readonly LimitExplanation[]
}

/**
 * Which limits of its set hold for an order, and why. The chamber bore is stated with each measured
 * value, so that a limit per millimetre of it is multiplied there.
 */
export function explainOrderLimits(of: {
  readonly limitSet: LimitSet
  readonly seal: Seal
  readonly workOrder: WorkOrder
}): readonly ExplainedPart[] {
  const { limitSet, seal, workOrder } = of
  const faces = seal.components.filter((one) => faceKinds.some((kind) => kind === one.kind))
  return [...faces, null].map((component) => {
    const limitCase = limitCaseOf({
      seal,
      workOrder,
      componentId: component?.id ?? null,
      boreMm: null,
    })
    const own = characteristics.filter((one) => belongsToFace(one) === (component !== null))
    return {
      component,
      limitCase,
      explanations: own.map((one) => explainLimit(limitSet, one, limitCase)),
    }
  })
}
