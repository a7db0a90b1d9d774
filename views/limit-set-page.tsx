import type { FC } from 'hono/jsx'
import type { Limit, LimitSet } from '../src/domain/limit-set.ts'
import { ButtonLink } from './components/button-link.tsx'
import { Facts } from './components/facts.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { limitUnitsText } from './figures/limit-units-text.ts'
import { numberText } from './figures/number-text.ts'
import { startPressureText } from './figures/start-pressure-text.ts'
import { type Frame, Page } from './page.tsx'
import { tradeWord } from './words/en/trade.ts'
import { words } from './words/en.ts'

export type LimitSetPageProps = {
  readonly frame: Frame
  readonly set: LimitSet
  /** The newest set of this name, which may be this one. */
  readonly newest: Pick<LimitSet, 'id' | 'version'>
  readonly isOffered: boolean
  readonly mayWrite: boolean
  readonly isRecorded: boolean
}

/** One set: each limit as its source writes it, in the units of the trade, and how it is founded. */
export const LimitSetPage: FC<LimitSetPageProps> = (props) => {
  const { frame, set, newest, isOffered, mayWrite, isRecorded } = props
  const w = words.limitSets
  const isNewest = newest.id === set.id
  return (
    <Page frame={frame} title={set.name} width="wide">
      <PageHead title={set.name} over={w.over(set.version, set.datedOn)}>
        {mayWrite && isNewest ? (
          <ButtonLink href={`/limit-sets/${set.id}/next`} label={w.nextVersion} />
        ) : null}
      </PageHead>
      <div class="stack-loose">
        {isRecorded ? <Notice kind="done" text={words.chrome.saved} /> : null}
        {isNewest ? null : (
          <p>
            <a href={`/limit-sets/${newest.id}`}>{w.newerStands(newest.version)}</a>
          </p>
        )}
        {isOffered ? <p class="strong">{w.isOffered}</p> : null}
        <Facts
          layout="rows"
          pairs={[
            { label: w.note, value: set.note === '' ? w.noNote : set.note },
            {
              label: w.directions,
              value: (
                <>
                  {set.directionsRequiredCount} <span class="soft">({w.directionsSource})</span>
                </>
              ),
            },
          ]}
        />
        <LimitList set={set} />
        {mayWrite ? (
          <p>
            <a href={`/audit?subject=${encodeURIComponent(`limit-set ${set.id}`)}`}>{w.trail}</a>
          </p>
        ) : null}
      </div>
    </Page>
  )
}

/** Rows that stand side by side on a desk and below one another on a phone: nothing scrolls away. */
const LimitList: FC<{ set: LimitSet }> = ({ set }) => {
  const w = words.limitSets
  return (
    <section aria-labelledby="limits-title">
      <div class="section-head">
        <h2 id="limits-title">{w.limitsTitle}</h2>
      </div>
      <ul class="job-list">
        {set.limits.map((one) => (
          <li class="job record-row">
            <div>
              <h3>{titleOf(one)}</h3>
              {holdsFor(one).map((line) => (
                <p class="soft">{line}</p>
              ))}
            </div>
            <Units limit={one} />
            <div>
              <Basis limit={one} />
            </div>
          </li>
        ))}
      </ul>
    </section>
  )
}

const Units: FC<{ limit: Limit }> = ({ limit }) => (
  <div>
    {limitUnitsText(limit).map((text, index) => (
      <p class={index === 0 ? 'number strong' : 'number'}>{text}</p>
    ))}
    <p class="soft">{words.limitSets.writtenAs(limit.asWritten)}</p>
  </div>
)

/** What has no source says so with a sign: it is not to be mistaken for what has one. */
const Basis: FC<{ limit: Limit }> = ({ limit }) => {
  const { limitBasis } = words.trade
  const word = limitBasis[limit.basis]
  const isUnsourced = limit.basis === 'common practice, no source' || limit.basis === 'from memory'
  return (
    <>
      {isUnsourced ? <VerdictMark verdict="missing" word={word} /> : <p class="strong">{word}</p>}
      <p>{limit.source}</p>
    </>
  )
}

function titleOf({ characteristic, faceMaterial }: Limit): string {
  const { limitSets, trade } = words
  const title = trade.characteristic[characteristic]
  if (characteristic !== 'flatness') return title
  const material =
    faceMaterial === null ? limitSets.everyFace : tradeWord(trade.faceMaterial, faceMaterial)
  return `${title}: ${material.toLowerCase()}`
}

function holdsFor({ withinS, volumeAtMostL, startAtLeastKPaGauge }: Limit): readonly string[] {
  const w = words.limitSets
  return [
    withinS === null ? '' : w.within(numberText(withinS)),
    volumeAtMostL === null ? '' : w.volumeAtMost(numberText(volumeAtMostL)),
    startAtLeastKPaGauge === null ? '' : w.startedAtLeast(startPressureText(startAtLeastKPaGauge)),
  ].filter((line) => line !== '')
}
