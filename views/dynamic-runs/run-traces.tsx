import type { FC } from 'hono/jsx'
import type { ComputedRun } from '../../src/domain/compute-dynamic-run.ts'
import { figure } from '../../src/domain/figure.ts'
import { runTrace } from '../../src/domain/run-trace.ts'
import { tracePlot } from '../../src/plots/trace-plot.ts'
import { DataTable } from '../components/data-table.tsx'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { words } from '../words/en.ts'

/** Every channel over time, and its figures in a table. */
export const RunTraces: FC<{ computed: ComputedRun }> = ({ computed }) => {
  const w = words.dynamicRuns
  const { channels } = computed
  const text = (value: number) => figure(value, { digits: 4 }).text
  return (
    <section class="stack" aria-labelledby="channels-title">
      <div class="section-head">
        <h2 id="channels-title">{w.channelsTitle}</h2>
      </div>
      <div class="run-traces">
        {channels.map(({ channel }) => {
          const trace = runTrace(computed, channel)
          if (trace === null) return null
          const title = w.channels[channel]
          const minutes = (s: number) =>
            w.minutes(figure((s - trace.fromS) / 60, { decimals: 1 }).text)
          return (
            <div>
              <SvgDrawing
                drawing={tracePlot({
                  ...trace,
                  widthPx: 380,
                  texts: { title, least: text, from: minutes(trace.fromS), to: minutes(trace.toS) },
                })}
                id={`trace-${channel}`}
                title={w.plotTitle(title)}
              />
            </div>
          )
        })}
      </div>
      <DataTable
        caption={w.channelsTitle}
        isCaptionHidden
        columns={[
          { label: w.columns.channel },
          ...(['count', 'mean', 'least', 'most', 'last'] as const).map((one) => ({
            label: w.columns[one],
            kind: 'number' as const,
          })),
        ]}
        rows={channels.map((one) => ({
          cells: [
            w.channels[one.channel],
            String(one.readingCount),
            text(one.mean),
            text(one.least),
            text(one.most),
            text(one.last),
          ],
        }))}
      />
    </section>
  )
}
