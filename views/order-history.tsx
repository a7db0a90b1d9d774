import type { FC } from 'hono/jsx'
import type { Evidence } from '../src/domain/evidence.ts'
import type { StageStep } from '../src/domain/stage-steps.ts'
import { DataTable } from './components/data-table.tsx'
import { StageLine } from './components/stage-line.tsx'
import { dayText, minuteText } from './figures/time-text.ts'
import { words } from './words/en.ts'

/** Where the order stands on its way, with the days. */
export const OrderWay: FC<{ steps: readonly StageStep[] }> = ({ steps }) => {
  const w = words.workOrders
  return (
    <StageLine
      label={w.stageLine}
      stages={steps.map(({ stage, state, at }) => ({
        label: words.trade.stage[stage],
        state,
        stateWord: w.stageState[state],
        detail: at === null ? undefined : dayText(at),
      }))}
    />
  )
}

/** Every step with who took it, and the reason or note that was given. */
export const OrderHistory: FC<{ evidence: Evidence }> = ({ evidence }) => {
  const w = words.workOrders
  const { handOver } = evidence
  return (
    <DataTable
      caption={w.historyTitle}
      isCaptionHidden
      columns={[
        { label: w.history.stage },
        { label: w.history.at },
        { label: w.history.by },
        { label: w.history.reason },
      ]}
      rows={evidence.stageChanges.map(({ to, at, byName, reason }) => {
        const note = at === handOver?.at && to === 'handed-over' ? handOver.note : ''
        const said = reason === '' ? note : reason
        const when = <span class="when">{minuteText(at)}</span>
        return { cells: [words.trade.stage[to], when, byName, said] }
      })}
    />
  )
}
