import type { FC } from 'hono/jsx'
import type { DynamicRun } from '../src/domain/dynamic-run.ts'
import { minuteText } from './figures/time-text.ts'
import { words } from './words/en.ts'

/** Runs on the rig of an order, each with a page of its own; nothing where there is none. */
export const OrderRuns: FC<{ runs: readonly DynamicRun[]; orderNumber: string }> = (props) => {
  const { runs, orderNumber } = props
  const w = words.dynamicRuns
  if (runs.length === 0) return null
  return (
    <section id="runs" class="records" aria-labelledby="runs-title">
      <div class="section-head">
        <h2 id="runs-title">{w.sectionTitle}</h2>
      </div>
      <ul class="stack-tight">
        {runs.map((run) => {
          const link = (
            <a href={`/work-orders/${orderNumber}/dynamic-runs/${run.id}`}>
              {w.link(minuteText(run.startedAt))}
            </a>
          )
          return (
            <li>
              {run.replacedById === null ? link : <s>{link}</s>}{' '}
              <span class="small soft">{w.count(run.sampleCount)}</span>
            </li>
          )
        })}
      </ul>
      <p class="small soft">{w.notJudged}</p>
    </section>
  )
}
