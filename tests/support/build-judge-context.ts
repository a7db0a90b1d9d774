import { houseRule } from '../../src/domain/agreed-rule.ts'
import type { JudgeContext } from '../../src/domain/judge-context.ts'
import { buildLimitSet } from './build-limit-set.ts'
import { buildSeal } from './build-seal.ts'
import { buildWorkOrder } from './build-work-order.ts'

/** An order that nobody agreed on another rule for than the house's. */
export function buildJudgeContext(changes: Partial<JudgeContext> = {}): JudgeContext {
  return {
    limitSet: buildLimitSet(),
    agreedRule: houseRule,
    seal: buildSeal(),
    workOrder: buildWorkOrder(),
    ...changes,
  }
}
