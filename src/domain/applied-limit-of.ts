import type { Characteristic } from './characteristic.ts'
import type { JudgeContext } from './judge-context.ts'
import { limitCaseOf } from './limit-case-of.ts'
import { type AppliedLimit, limitFor } from './limit-for.ts'

/** The limit that holds for a result of an order: of a component, or of the seal as a whole. */
export function appliedLimitOf(
  characteristic: Characteristic,
  context: Pick<JudgeContext, 'limitSet' | 'seal' | 'workOrder'>,
  of: { readonly componentId: number | null; readonly boreMm?: number | null },
): AppliedLimit | undefined {
  const { limitSet, seal, workOrder } = context
  const { componentId, boreMm = null } = of
  const limitCase = limitCaseOf({ seal, workOrder, componentId, boreMm })
  return limitFor(limitSet, characteristic, limitCase)
}
