import { type ComputedRun, computeDynamicRun } from '../../domain/compute-dynamic-run.ts'
import { latestRunBatch } from '../../store/latest-run-batch.ts'
import type { Store } from '../../store/open.ts'
import { readRunBatches } from '../../store/read-run-batches.ts'

type Kept = { readonly latestBatch: number; readonly computed: ComputedRun | null }

const mostKept = 50
const kept = new WeakMap<Store, Map<number, Kept>>()

/**
 * What the readings of a run say so far, and the number of the last batch in it. Kept until another
 * batch comes: many look at a run that is pushed every second.
 */
export function computedRun(
  store: Store,
  run: { readonly id: number; readonly densityKgPerM3: number | null },
): Kept {
  const ofStore = kept.get(store) ?? new Map<number, Kept>()
  kept.set(store, ofStore)
  // Before the readings: what comes between is told once more.
  const latestBatch = latestRunBatch(store, run.id)
  const known = ofStore.get(run.id)
  if (known?.latestBatch === latestBatch) return known
  const fresh = {
    latestBatch,
    computed: computeDynamicRun(readRunBatches(store, run.id), run.densityKgPerM3),
  }
  ofStore.delete(run.id)
  ofStore.set(run.id, fresh)
  if (ofStore.size > mostKept) ofStore.delete(ofStore.keys().next().value as number)
  return fresh
}
