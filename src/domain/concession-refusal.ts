import { blocksRelease } from './blocks-release.ts'
import type { Concession } from './concession.ts'
import { countedResults } from './counted-results.ts'
import { didTheWork } from './did-the-work.ts'
import type { Evidence } from './evidence.ts'
import { openStages } from './stage.ts'
import type { User } from './user.ts'

/** Why a result can't be conceded; the sentences stand in `views/words`. */
export const concessionRefusals = [
  'not-inspector',
  'worked-on-order',
  'concession-too-late',
  'nothing-to-concede',
  'no-figure-to-concede',
  'already-conceded',
] as const
export type ConcessionRefusal = (typeof concessionRefusals)[number]

export type ConcessionQuestion = {
  readonly evidence: Evidence
  readonly user: Pick<User, 'id' | 'role' | 'isActive'>
  readonly asked: Pick<Concession, 'subjectKind' | 'subjectId' | 'characteristic'>
}

/**
 * What stands against conceding a result; undefined where nothing does. Only a result that speaks
 * for the seal and doesn't keep its limit, or can't be decided, is there to be conceded; an
 * unreadable face has no figure that a customer could take.
 */
export function concessionRefusal(question: ConcessionQuestion): ConcessionRefusal | undefined {
  const { evidence, user, asked } = question
  if (user.role !== 'inspector' || !user.isActive) return 'not-inspector'
  if (didTheWork(evidence, user.id, evidence.handOver)) return 'worked-on-order'
  const { stage } = evidence.workOrder
  if (!openStages.includes(stage) && stage !== 'handed-over') return 'concession-too-late'
  const result = countedResults(evidence).find(
    (one) =>
      one.subjectKind === asked.subjectKind &&
      one.subjectId === asked.subjectId &&
      one.judged.characteristic === asked.characteristic,
  )
  if (result === undefined || !blocksRelease(result.judged.verdict)) return 'nothing-to-concede'
  if (result.judged.why === 'unreadable') return 'no-figure-to-concede'
  return result.concession === null ? undefined : 'already-conceded'
}
