import type { FC } from 'hono/jsx'
import { characteristics } from '../src/domain/characteristic.ts'
import type { Limit } from '../src/domain/limit-set.ts'
import { VerdictMark } from './components/verdict-mark.tsx'
import { conditionsText } from './figures/conditions-text.ts'
import { limitUnitsText } from './figures/limit-units-text.ts'
import { numberText } from './figures/number-text.ts'
import { startPressureText } from './figures/start-pressure-text.ts'
import { words } from './words/en.ts'

/**
 * Every limit of a set by what it limits. Its parts stand side by side on a desk and below one
 * another on a phone: nothing scrolls away.
 */
export const LimitList: FC<{ limits: readonly Limit[] }> = ({ limits }) => {
  const limited = characteristics.filter((one) =>
    limits.some((limit) => limit.characteristic === one),
  )
  return (
    <section class="stack-loose" aria-labelledby="limits-title">
      <div class="section-head">
        <h2 id="limits-title">{words.limitSets.limitsTitle}</h2>
      </div>
      {limited.map((characteristic) => (
        <section class="stack">
          <h3>{words.trade.characteristic[characteristic]}</h3>
          <ul class="job-list">
            {limits
              .filter((one) => one.characteristic === characteristic)
              .map((one) => (
                <li class="job record-row">
                  <div>
                    <p class="strong">{sentenceCase(conditionsText(one))}</p>
                    <AsWritten limit={one} />
                    <p class="cell-detail">
                      {words.limitSets.numberOfLimit(limits.indexOf(one) + 1)}
                    </p>
                  </div>
                  <div>
                    {limitUnitsText(one).map((text, index) => (
                      <p class={index === 0 ? 'number strong' : 'number'}>{text}</p>
                    ))}
                  </div>
                  <div>
                    <LimitBasisMark limit={one} />
                  </div>
                </li>
              ))}
          </ul>
        </section>
      ))}
    </section>
  )
}

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}

const AsWritten: FC<{ limit: Limit }> = ({ limit }) => (
  <>
    <p>{words.limitSets.writtenAs(limit.asWritten)}</p>
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
