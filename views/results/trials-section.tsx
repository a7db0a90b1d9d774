import type { FC } from 'hono/jsx'
import { type ComparedTrials, offeredTrialCount } from '../../src/domain/compared-trials.ts'
import type { Fault } from '../../src/domain/fault.ts'
import { figure } from '../../src/domain/figure.ts'
import { printedUnit } from '../../src/domain/printed-unit.ts'
import type { ShownResult } from '../../src/domain/shown-result.ts'
import { TrialsPlot } from '../calculator/trials-plot.tsx'
import { Button } from '../components/button.tsx'
import { ButtonRow } from '../components/button-row.tsx'
import { Field } from '../components/field.tsx'
import { Notice } from '../components/notice.tsx'
import { percentText } from '../figures/percent-text.ts'
import { faultSentence } from '../words/en/faults.ts'
import { words } from '../words/en.ts'

/** Trials of the formula that was kept: nothing to try, not asked for yet, refused, or done. */
export type Trials =
  | { readonly kind: 'none' }
  | { readonly kind: 'no-model' }
  | { readonly kind: 'ask'; readonly seed: string }
  | { readonly kind: 'faulty'; readonly seed: string; readonly faults: readonly Fault[] }
  /** The formula gave no number in some trial. */
  | { readonly kind: 'failed'; readonly seed: string }
  | { readonly kind: 'done'; readonly seed: string; readonly compared: ComparedTrials }

const w = words.results.trials
/** Thousands apart, as print has them. */
const countText = String(offeredTrialCount).replace(/\B(?=(\d{3})+$)/g, ' ')

/** The uncertainty by propagation of distributions, beside the budget's. */
export const TrialsSection: FC<{ result: ShownResult; trials: Trials }> = ({ result, trials }) => {
  if (trials.kind === 'none') return null
  return (
    <section class="stack" id="trials" aria-labelledby="trials-title">
      <div class="section-head">
        <h2 id="trials-title">{w.title}</h2>
      </div>
      {trials.kind === 'no-model' ? (
        <p>{w.noModel}</p>
      ) : (
        <>
          <p>{w.lead(countText)}</p>
          {trials.kind === 'failed' ? <Notice kind="note" text={w.failed} /> : null}
          {trials.kind === 'done' ? <Done result={result} compared={trials.compared} /> : null}
          <TrialsForm
            seed={trials.seed}
            fault={trials.kind === 'faulty' ? trials.faults[0] : undefined}
          />
        </>
      )}
    </section>
  )
}

/** Asked by address, so that an answer can be sent to somebody. */
const TrialsForm: FC<{ seed: string; fault: Fault | undefined }> = ({ seed, fault }) => (
  <form method="get" action="#trials" class="stack-tight">
    <input type="hidden" name="trials" value={String(offeredTrialCount)} />
    <Field
      name="seed"
      label={w.seed}
      hint={w.seedHint}
      value={seed}
      inputMode="numeric"
      width="number"
      error={fault === undefined ? undefined : faultSentence(fault)}
    />
    <ButtonRow>
      <Button label={w.run(countText)} />
    </ButtonRow>
  </form>
)

/** The sentence first, then the picture with the three intervals. */
const Done: FC<{ result: ShownResult; compared: ComparedTrials }> = ({ result, compared }) => {
  const { run, linear, validation } = compared
  const unit = words.trade.unit[printedUnit[result.characteristic].unit]
  const text = (value: number) => `${figure(value, { digits: 2 }).text} ${unit}`
  const difference = Math.max(validation.lowDifference, validation.highDifference)
  const says = validation.isValid ? w.agrees : w.differs
  return (
    <>
      <p class="strong">{says(text(difference), text(validation.tolerance))}</p>
      <TrialsPlot
        trials={run}
        linear={linear}
        unitText={unit}
        widthPx={400}
        texts={{
          title: w.drawing,
          linear: (interval) => `${w.linear}: ${interval}`,
          shortest: (interval) => `${w.shortest}: ${interval}`,
          symmetric: (interval) => `${w.symmetric}: ${interval}`,
          interval: w.interval,
        }}
      />
      <p class="small soft">{w.coverage(percentText(run.probability))}</p>
    </>
  )
}
