import { type BenchJob, BenchPage } from '../../../views/bench-page.tsx'
import type { BenchLine } from '../../domain/bench.ts'
import { listDecisions } from '../../store/list-decisions.ts'
import type { Store } from '../../store/open.ts'
import { readBench } from '../../store/read-bench.ts'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'

/** The bench as it stands today; with the fault where an empty number was sent. */
export function sendBench(
  c: AppContext,
  find: { readonly typed: string; readonly isEmpty: boolean },
): Promise<Response> {
  const { store, now } = c.var.shop
  const today = now().toISOString().slice(0, 10)
  const bench = readBench(store, today)
  const jobs = (lines: readonly BenchLine[]) => lines.map((line) => jobOf(store, line))
  const page = (
    <BenchPage
      frame={frameOf(c)}
      today={today}
      failed={jobs(bench.failed)}
      dueSoon={jobs(bench.dueSoon)}
      waiting={jobs(bench.waiting)}
      inspection={jobs(bench.inspection)}
      find={find}
    />
  )
  return sendPage(c, page, find.isEmpty ? 422 : 200)
}

function jobOf(store: Store, line: BenchLine): BenchJob {
  const decision = line.stage === 'refused' ? listDecisions(store, line.id).at(-1) : undefined
  return { ...line, refusal: decision ?? null }
}
