import { AppError } from './app-error.ts'
import type { LimitSet, LimitSetStep } from './limit-set.ts'
import { limitTies } from './limit-ties.ts'
import type { User } from './user.ts'

export type StepQuestion = {
  readonly set: LimitSet
  readonly step: LimitSetStep['step']
  readonly by: Pick<User, 'id' | 'role' | 'isActive'>
}

/**
 * What stands against approving or retiring a set; undefined where nothing does. Approval is a
 * second pair of eyes: whoever wrote the draft doesn't give it, and no limit may tie with another.
 */
export function limitSetStepRefusal({ set, step, by }: StepQuestion): AppError | undefined {
  if (by.role !== 'inspector' || !by.isActive) return new AppError('forbidden', 'not-inspector')
  const has = (kind: LimitSetStep['step']) => set.steps.some((one) => one.step === kind)
  if (has('retired')) return new AppError('conflict', 'limit-set-retired')
  if (step === 'retired') return undefined
  if (has('approved')) return new AppError('conflict', 'limit-set-approved')
  if (set.writtenById === by.id) return new AppError('conflict', 'own-draft')
  const tie = limitTies(set.limits)[0]
  if (tie === undefined) return undefined
  const [first, second] = tie.map((one) => set.limits.indexOf(one))
  return new AppError('conflict', 'limits-tie', {
    first: `${(first ?? 0) + 1}. ${tie[0].asWritten}`,
    second: `${(second ?? 0) + 1}. ${tie[1].asWritten}`,
  })
}
