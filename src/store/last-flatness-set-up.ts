import { desc, eq } from 'drizzle-orm'
import type { FlatnessBudgetInput } from '../domain/flatness-budget-input.ts'
import type { Store } from './open.ts'
import { flatnessReading } from './schema/flatness-reading.ts'

export type FlatnessSetUp = {
  readonly workOrderId: number
  /** Null in records older than budgets. */
  readonly budgetInput: FlatnessBudgetInput | null
}

/** What a user stated for the uncertainty of the reading before: the form offers it again. */
export function lastFlatnessSetUp(store: Store, userId: number): FlatnessSetUp | undefined {
  return store.db
    .select({
      workOrderId: flatnessReading.workOrderId,
      budgetInput: flatnessReading.budgetInput,
    })
    .from(flatnessReading)
    .where(eq(flatnessReading.recordedById, userId))
    .orderBy(desc(flatnessReading.id))
    .limit(1)
    .get()
}
