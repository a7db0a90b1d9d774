import type { Characteristic } from './characteristic.ts'
import type { JudgeContext } from './judge-context.ts'
import { limitFor } from './limit-for.ts'
import type { Limit } from './limit-set.ts'

export type AppliedLimit = {
  readonly limit: Limit
  readonly lower: number | null
  readonly upper: number | null
  readonly isSizeKnown: boolean
}

/** The limit that holds for a result of an order: of a component, or of the seal as a whole. */
export function appliedLimitOf(
  characteristic: Characteristic,
  context: Pick<JudgeContext, 'limitSet' | 'seal' | 'workOrder'>,
  of: { readonly componentId: number | null; readonly boreMm?: number | null },
): AppliedLimit | undefined {
  const face = context.seal.components.find((one) => one.id === of.componentId)
  const limit = limitFor(context.limitSet, characteristic, face?.material ?? null)
  if (limit === undefined) return undefined
  return { limit, lower: limit.lower, upper: limit.upper, isSizeKnown: limit.perMmOf === null }
}
