import type { FC } from 'hono/jsx'
import type { ComputedRun } from '../src/domain/compute-dynamic-run.ts'
import type { DynamicRun } from '../src/domain/dynamic-run.ts'
import { figure } from '../src/domain/figure.ts'
import { runOddities } from '../src/domain/merge-run-samples.ts'
import { Caution } from './components/caution.tsx'
import { DataTable } from './components/data-table.tsx'
import { Facts } from './components/facts.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { RunLeak } from './dynamic-runs/run-leak.tsx'
import { RunTraces } from './dynamic-runs/run-traces.tsx'
import { minuteText } from './figures/time-text.ts'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

export type DynamicRunPageProps = {
  readonly frame: Frame
  readonly orderNumber: string
  readonly sealSerial: string
  readonly run: DynamicRun
  /** Of its readings; 0 before the first. */
  readonly latestBatch: number
  /** Null before the first reading. */
  readonly computed: ComputedRun | null
}

/** One run on the rig: what to look at first, leakage, traces, and how it was read. */
export const DynamicRunPage: FC<DynamicRunPageProps> = (props) => {
  const { frame, orderNumber, sealSerial, run, computed } = props
  const w = words.dynamicRuns
  return (
    <Page frame={frame} title={`${w.title} ${orderNumber}`} width="wide">
      <PageHead title={w.title} over={`${orderNumber} · ${sealSerial}`}>
        <a href={`/work-orders/${orderNumber}`}>{words.results.back.order}</a>
      </PageHead>
      {run.replacedById === null ? null : <Notice kind="note" text={w.replaced} />}
      <div class="stack-loose">
        <Caution sign={words.chrome.caution} title={w.cautionTitle}>
          {w.caution.map((text) => (
            <p>{text}</p>
          ))}
        </Caution>
        <p class="small soft" role="status" data-live-told></p>
        <section class="card stack">
          <p>{w.begun(run.recordedByName, minuteText(run.startedAt))}</p>
          <Facts
            pairs={[
              { label: w.liquid, value: run.liquid || w.notStated },
              {
                label: w.density,
                value:
                  run.densityKgPerM3 === null
                    ? w.notStated
                    : w.densityText(figure(run.densityKgPerM3, 'as-entered').text),
              },
            ]}
          />
          {run.note === '' ? null : <p class="small">{run.note}</p>}
          <p class="small soft">{w.notJudged}</p>
        </section>
        <div
          class="stack-loose"
          data-live-run
          data-latest={String(props.latestBatch)}
          data-live={`/work-orders/${orderNumber}/dynamic-runs/${run.id}/live`}
          data-on={w.live.on}
          data-lost={w.live.lost}
        >
          {computed === null ? (
            <p class="lead">{w.empty}</p>
          ) : (
            <>
              {computed.cautions.map((one) => (
                <Notice kind="note" text={w.cautions[one]} />
              ))}
              <RunLeak computed={computed} />
              <RunTraces computed={computed} />
              <Oddities computed={computed} />
            </>
          )}
        </div>
        <Steps run={run} />
      </div>
    </Page>
  )
}

const Oddities: FC<{ computed: ComputedRun }> = ({ computed: { oddities } }) => {
  const w = words.dynamicRuns
  const told = runOddities.flatMap((one) => {
    const count = oddities[one]
    return count === undefined ? [] : [w.oddityText(w.oddities[one], count)]
  })
  if (told.length === 0) return null
  return (
    <section class="stack-tight" aria-labelledby="oddities-title">
      <h2 id="oddities-title">{w.odditiesTitle}</h2>
      <ul>
        {told.map((text) => (
          <li>{text}</li>
        ))}
      </ul>
    </section>
  )
}

const Steps: FC<{ run: DynamicRun }> = ({ run }) => {
  const w = words.dynamicRuns
  if (run.steps.length === 0) return null
  const text = (value: number | null) =>
    value === null ? w.notStated : figure(value, 'as-entered').text
  return (
    <section class="stack" aria-labelledby="steps-title">
      <div class="section-head">
        <h2 id="steps-title">{w.stepsTitle}</h2>
      </div>
      <DataTable
        caption={w.stepsTitle}
        isCaptionHidden
        columns={[
          { label: w.steps.name },
          { label: w.steps.holdS, kind: 'number' },
          { label: w.steps.speedPerMin, kind: 'number' },
          { label: w.steps.pressureKPaGauge, kind: 'number' },
          { label: w.steps.temperatureC, kind: 'number' },
        ]}
        rows={run.steps.map((step) => ({
          cells: [
            step.name,
            text(step.holdS),
            text(step.speedPerMin),
            text(step.pressureKPaGauge),
            text(step.temperatureC),
          ],
        }))}
      />
    </section>
  )
}
