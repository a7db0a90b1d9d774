import type { FC } from 'hono/jsx'
import { characteristics } from '../src/domain/characteristic.ts'
import type { Limit } from '../src/domain/limit-set.ts'
import { DataTable } from './components/data-table.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { conditionsText } from './figures/conditions-text.ts'
import { limitUnitsText } from './figures/limit-units-text.ts'
import { numberText } from './figures/number-text.ts'
import { startPressureText } from './figures/start-pressure-text.ts'
import { words } from './words/en.ts'

/** Every limit of a set, a table for each thing that is limited. */
export const LimitTables: FC<{ limits: readonly Limit[] }> = ({ limits }) => {
  const w = words.limitSets
  const limited = characteristics.filter((one) =>
    limits.some((limit) => limit.characteristic === one),
  )
  return (
    <section class="stack-loose" aria-labelledby="limits-title">
      <div class="section-head">
        <h2 id="limits-title">{w.limitsTitle}</h2>
      </div>
      {limited.map((characteristic) => {
        const title = words.trade.characteristic[characteristic]
        return (
          <section class="stack">
            <h3>{title}</h3>
            <DataTable
              caption={w.limitsOf(title)}
              isCaptionHidden
              columns={[
                { label: w.limitColumn.conditions },
                { label: w.limitColumn.limit },
                { label: w.limitColumn.converted },
                { label: w.limitColumn.basis },
              ]}
              rows={limits
                .filter((one) => one.characteristic === characteristic)
                .map((one) => ({
                  cells: [
                    <>
                      {conditionsText(one)}
                      <p class="cell-detail">{w.numberOfLimit(limits.indexOf(one) + 1)}</p>
                    </>,
                    <AsWritten limit={one} />,
                    limitUnitsText(one).map((text) => <p class="number">{text}</p>),
                    <LimitBasisMark limit={one} />,
                  ],
                }))}
            />
          </section>
        )
      })}
    </section>
  )
}

const AsWritten: FC<{ limit: Limit }> = ({ limit }) => (
  <>
    <p class="strong">{limit.asWritten}</p>
    {holdsFor(limit).map((line) => (
      <p class="cell-detail">{line}</p>
    ))}
  </>
)

/** What has no source says so with a sign: it is not to be mistaken for what has one. */
export const LimitBasisMark: FC<{ limit: Limit }> = ({ limit }) => {
  const { trade, limitSets: w } = words
  const { basis, source, edition, clause } = limit
  const word = trade.limitBasis[basis]
  const isUnsourced = basis === 'common practice, no source' || basis === 'from memory'
  const place = [
    edition === '' ? '' : w.edition(edition),
    clause === '' ? '' : w.clause(clause),
  ].filter((one) => one !== '')
  return (
    <>
      {isUnsourced ? <VerdictMark verdict="missing" word={word} /> : <p class="strong">{word}</p>}
      <p>{source}</p>
      {place.length === 0 ? null : <p class="cell-detail">{place.join(', ')}</p>}
    </>
  )
}

function holdsFor({ withinS, volumeAtMostL, startAtLeastKPaGauge }: Limit): readonly string[] {
  const w = words.limitSets
  return [
    withinS === null ? '' : w.within(numberText(withinS)),
    volumeAtMostL === null ? '' : w.volumeAtMost(numberText(volumeAtMostL)),
    startAtLeastKPaGauge === null ? '' : w.startedAtLeast(startPressureText(startAtLeastKPaGauge)),
  ].filter((line) => line !== '')
}
