import type { FC } from 'hono/jsx'
import type { ShownResult } from '../../src/domain/shown-result.ts'
import { words } from '../words/en.ts'

/** Trials of the formula that was kept: not possible, not asked for yet, or done. */
export type Trials = { readonly kind: 'none' }

/** The uncertainty by propagation of distributions, beside the budget's. */
export const TrialsSection: FC<{ result: ShownResult; trials: Trials }> = ({ result }) => {
  const w = words.results.trials
  if (result.uncertainty === null) return null
  return (
    <section class="stack" aria-labelledby="trials-title">
      <div class="section-head">
        <h2 id="trials-title">{w.title}</h2>
      </div>
      <p>{w.noModel}</p>
    </section>
  )
}
