import { eq, max } from 'drizzle-orm'
import type { Store } from './open.ts'
import { doubtAnswer } from './schema/doubt-answer.ts'

/** What a page of records in doubt has seen of their answers; 0 where none was given. */
export function newestDoubtAnswerId({ db }: Store, calibrationId: number): number {
  const found = db
    .select({ id: max(doubtAnswer.id) })
    .from(doubtAnswer)
    .where(eq(doubtAnswer.calibrationId, calibrationId))
    .get()
  return found?.id ?? 0
}
