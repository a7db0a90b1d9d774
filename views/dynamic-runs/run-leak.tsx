import type { FC } from 'hono/jsx'
import type { ComputedRun } from '../../src/domain/compute-dynamic-run.ts'

import { figure } from '../../src/domain/figure.ts'
import { Facts } from '../components/facts.tsx'
import { words } from '../words/en.ts'

type RunIn = NonNullable<NonNullable<ComputedRun['leak']>['runIn']>

/** The steady leakage with its interval, the run-in, and what to know about both. */
export const RunLeak: FC<{ computed: ComputedRun }> = ({ computed }) => {
  const w = words.dynamicRuns
  const { leak, samples } = computed
  return (
    <section class="card stack" aria-labelledby="leak-title">
      <h2 id="leak-title">{w.leakTitle}</h2>
      {leak === null ? <p>{w.noMass}</p> : null}
      {leak !== null && leak.steadyGPerH === null ? <p class="strong">{w.noRate}</p> : null}
      {leak === null || leak.steadyGPerH === null ? null : (
        <Facts
          pairs={[
            { label: w.steady, value: w.gPerH(three(leak.steadyGPerH)) },
            ...(leak.steadyMlPerH === null
              ? []
              : [{ label: w.steady, value: w.mlPerH(three(leak.steadyMlPerH)) }]),
            ...(leak.confidence95GPerH === null
              ? []
              : [{ label: w.interval, value: intervalText(leak.confidence95GPerH) }]),
            {
              label: w.runIn,
              value: leak.runIn === null ? w.noRunIn : runInText(leak.runIn),
            },
            {
              label: w.steadyFrom,
              value:
                leak.steadyFromS === null
                  ? w.never
                  : w.minutes(
                      figure((leak.steadyFromS - (samples[0]?.timeS ?? 0)) / 60, { decimals: 1 })
                        .text,
                    ),
            },
          ]}
        />
      )}
      {(leak?.cautions ?? []).map((one) => (
        <p class="small strong">{w.leakCautions[one]}</p>
      ))}
    </section>
  )
}

function three(value: number): string {
  return figure(value, { digits: 3 }).text
}

function runInText({ extraG, timeConstantS }: RunIn): string {
  const w = words.dynamicRuns
  const minutes = three(timeConstantS / 60)
  return extraG < 0 ? w.runInLess(three(-extraG), minutes) : w.runInText(three(extraG), minutes)
}

function intervalText([low, high]: readonly [number, number]): string {
  return words.dynamicRuns.intervalText(three(low), three(high))
}
