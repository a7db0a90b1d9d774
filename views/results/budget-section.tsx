import type { FC } from 'hono/jsx'
import type { Characteristic } from '../../src/domain/characteristic.ts'
import { figure } from '../../src/domain/figure.ts'
import { largestLine } from '../../src/domain/largest-line.ts'
import { missingFromBudget } from '../../src/domain/missing-from-budget.ts'
import type { ShownResult } from '../../src/domain/shown-result.ts'
import { coverageFactorText } from '../../src/domain/uncertain-figure.ts'
import type { Uncertainty } from '../../src/domain/uncertainty.ts'
import { percentText } from '../figures/percent-text.ts'
import { sourceWord } from '../words/en/uncertainty-sources.ts'
import { words } from '../words/en.ts'
import { BudgetLines } from './budget-lines.tsx'

/** The budget line by line, what it leaves out, and where to begin to be surer. */
export const BudgetSection: FC<{ result: ShownResult }> = ({ result }) => {
  const { characteristic, uncertainty } = result
  return (
    <section class="stack" aria-labelledby="budget-title">
      <div class="section-head">
        <h2 id="budget-title">{words.results.budgetTitle}</h2>
      </div>
      {uncertainty === null ? (
        <NoBudget result={result} />
      ) : (
        <>
          <BudgetLines uncertainty={uncertainty} characteristic={characteristic} />
          {hasError(uncertainty) ? <p>{words.results.notCorrected}</p> : null}
          <InWords uncertainty={uncertainty} characteristic={characteristic} />
          <LeftOut sources={uncertainty.leftOut} />
        </>
      )}
    </section>
  )
}

/** Records older than these lines have none, and no word about them. */
function hasError({ budget }: Uncertainty): boolean {
  return budget.some(
    ({ source, distribution }) =>
      source.endsWith('-error') || (source === 'instrument' && distribution === 'rectangular'),
  )
}

const NoBudget: FC<{ result: ShownResult }> = ({ result }) => {
  const w = words.results
  if (result.judged.value === null) return <p>{w.unreadable}</p>
  return (
    <>
      <p class="strong">{w.noBudget}</p>
      <p>{result.isOlderThanBudgets ? w.olderThanBudgets : w.nothingKnown}</p>
    </>
  )
}

/** How the coverage factor came about, and what would have to be known, or improve. */
const InWords: FC<{ uncertainty: Uncertainty; characteristic: Characteristic }> = ({
  uncertainty,
  characteristic,
}) => {
  const w = words.results
  const { effectiveDegreesOfFreedom: effective } = uncertainty
  const factor = coverageFactorText(uncertainty.coverageFactor)
  const largest = largestLine(uncertainty)
  const missing = missingFromBudget(uncertainty, characteristic)
  return (
    <>
      <p>
        {effective === null
          ? w.coverage.known(factor)
          : w.coverage.effective(factor, figure(effective, { digits: 3 }).text)}
      </p>
      {missing.length > 0 ? (
        <p class="strong">{w.lacks(missing.map(sourceWord).join('; '))}</p>
      ) : null}
      {largest === null || missing.length > 0 ? null : (
        <p class="strong">
          {w.largest(sourceWord(largest.line.source), percentText(largest.varianceShare))}
        </p>
      )}
    </>
  )
}

const LeftOut: FC<{ sources: readonly string[] }> = ({ sources }) => {
  const w = words.results
  if (sources.length === 0) return null
  return (
    <>
      <h3>{w.leftOutTitle}</h3>
      <ul class="stack-tight">
        {sources.map((source) => (
          <li>{sourceWord(source)}</li>
        ))}
      </ul>
      <p class="small soft">{w.leftOutNote}</p>
    </>
  )
}
