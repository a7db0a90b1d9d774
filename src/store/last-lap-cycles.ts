import { desc } from 'drizzle-orm'
import type { LapCycle } from '../domain/lap-cycle.ts'
import type { Store } from './open.ts'
import { lapCycle } from './schema/lap-cycle.ts'

/** What the form of a further cycle offers again: how it was lapped, and never what it took off. */
export type LastLap = Pick<LapCycle, 'plate' | 'abrasive' | 'grit' | 'recordedById'>

const looked = 60

/** The newest cycles of the shop, newest first: the plates in use are among them. */
export function lastLapCycles(store: Store): readonly LastLap[] {
  const { plate, abrasive, grit, recordedById } = lapCycle
  return store.db
    .select({ plate, abrasive, grit, recordedById })
    .from(lapCycle)
    .orderBy(desc(lapCycle.id))
    .limit(looked)
    .all()
}
