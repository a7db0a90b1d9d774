import type { FC } from 'hono/jsx'
import { figure } from '../../src/domain/figure.ts'
import type { PlannedStaticTest } from '../../src/domain/plan-static-test.ts'
import { Facts } from '../components/facts.tsx'
import { energyText } from '../figures/energy-text.ts'
import { holdText } from '../figures/hold-text.ts'
import { resultText } from '../figures/result-text.ts'
import { words } from '../words/en.ts'

export type StaticTestPlan = PlannedStaticTest

/** What to know before the gas is let in: its energy, and whether this hold can see the limit. */
export const StaticTestPlanView: FC<{ plan: StaticTestPlan }> = ({ plan }) => {
  const w = words.staticTests.plan
  const { energy, smallestSeenPaM3PerS: seen, limitPaM3PerS: limit, neededHoldS } = plan
  const leak = (value: number) => {
    const { value: text, unit } = resultText('static-leak-rate', value)
    return `${text} ${unit}`
  }
  return (
    <section class="stack-tight" aria-labelledby="plan-title">
      <h2 id="plan-title" class="result-label">
        {w.title}
      </h2>
      <Facts
        layout="rows"
        pairs={[
          ...(plan.expandedVolumeL === null
            ? []
            : [
                {
                  label: w.volume,
                  value: `${figure(plan.expandedVolumeL, { digits: 4 }).text} ${words.trade.unit.l}`,
                },
              ]),
          { label: w.energy, value: energyText(energy) },
          ...(seen === null ? [] : [{ label: w.smallest, value: leak(seen) }]),
        ]}
      />
      {energy.energyJ > 0 ? <p class="small">{w.energyCaution}</p> : null}
      {neededHoldS === null || limit === null ? null : (
        <p class="small strong">{w.blind(leak(limit), holdText(neededHoldS))}</p>
      )}
    </section>
  )
}
