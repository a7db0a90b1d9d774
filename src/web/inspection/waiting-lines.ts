import type { WaitingLine } from '../../../views/inspection-page.tsx'
import { releaseFaults } from '../../domain/release-faults.ts'
import { listWorkOrders } from '../../store/list-work-orders.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import type { AppContext } from '../context.ts'
import { actor, viewer } from '../viewer.ts'
import { draftRecord } from './draft-record.ts'

/** More than this wait nowhere; the list of work orders has them all. */
const mostLines = 100

/** What waits for a decision, longest waiting first. */
export function waitingLines(c: AppContext): readonly WaitingLine[] {
  const { shop } = c.var
  const by = viewer(c)
  const { items } = listWorkOrders(shop.store, { stage: 'handed-over', limit: mostLines })
  const lines = items.map((line): WaitingLine => {
    const evidence = readEvidence(shop.store, line.id)
    const { handOver } = evidence
    const draft = { evidence, by, actor: actor(c), reason: '', number: '' }
    const faults = releaseFaults({ evidence, user: by, handOver })
    return {
      line,
      handOver,
      verdict: draftRecord(shop, draft).verdict,
      isOwnWork: faults.some((one) => one.id === 'lapped-or-tested'),
    }
  })
  return lines.sort((a, b) => Date.parse(a.handOver?.at ?? '') - Date.parse(b.handOver?.at ?? ''))
}
