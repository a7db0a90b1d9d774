import { asc, inArray } from 'drizzle-orm'
import { type Bench, type BenchLine, dueSoonDays, isFailing, whatNext } from '../domain/bench.ts'
import { openStages } from '../domain/stage.ts'
import type { Store } from './open.ts'
import { readEvidence } from './read-evidence.ts'
import { workOrder } from './schema/work-order.ts'
import { lineOf, selectLines } from './select-work-order-lines.ts'

/**
 * The orders in the workshop, oldest first; those due, by the day they are promised for.
 * @param today calendar day, `2026-11-25`
 */
export function readBench(store: Store, today: string): Bench {
  const lines = store.raw.transaction(() => benchLines(store, today)).deferred()
  const inspection = lines.filter((one) => one.stage === 'handed-over')
  const atWork = lines.filter((one) => one.stage !== 'handed-over')
  const failed = atWork.filter((one) => one.isFailing)
  const passing = atWork.filter((one) => !one.isFailing)
  const lastDay = addDays(today, dueSoonDays)
  const isDueSoon = (one: BenchLine) => one.dueOn !== null && one.dueOn <= lastDay
  const dueSoon = passing.filter(isDueSoon)
  dueSoon.sort((a, b) => (a.dueOn ?? '').localeCompare(b.dueOn ?? '') || a.id - b.id)
  return { waiting: passing.filter((one) => !isDueSoon(one)), dueSoon, failed, inspection }
}

function benchLines(store: Store, today: string): BenchLine[] {
  const rows = selectLines(store, inArray(workOrder.stage, [...openStages, 'handed-over']))
    .orderBy(asc(workOrder.id))
    .all()
  return rows.map((row) => {
    const line = lineOf(row)
    const evidence = readEvidence(store, line.id)
    return {
      ...line,
      whatNext: whatNext(evidence),
      isFailing: line.stage === 'refused' || isFailing(evidence),
      isOverdue: line.dueOn !== null && line.dueOn < today,
    }
  })
}

function addDays(day: string, count: number): string {
  const ms = Date.parse(`${day}T00:00:00Z`) + count * 86_400_000
  return new Date(ms).toISOString().slice(0, 10)
}
