import type { FC } from 'hono/jsx'
import type { LaidFace } from '../../src/domain/compare-whole-faces.ts'
import { figure } from '../../src/domain/figure.ts'
import { heightSteps } from '../../src/plots/height-steps.ts'
import type { HeightScale } from '../../src/plots/whole-face-drawings.ts'
import { minuteText } from '../figures/time-text.ts'
import { WholeFaceFigure } from '../whole-face/whole-face-figure.tsx'
import { words } from '../words/en.ts'
import type { ComparedPair, ListedReading } from './page-props.ts'
import { flatnessText, stateText } from './reading-title.ts'

const mostLines = 10

/** Both faces with their profiles, every height drawn equal. */
export const SideBySide: FC<{ pair: ComparedPair; orderNumber: string }> = (props) => {
  const { pair, orderNumber } = props
  const { first, second, comparison } = pair
  const w = words.wholeFaces
  const { range } = comparison
  const scale =
    range === null
      ? undefined
      : { ...range, stepUm: heightSteps(range, { mostCount: mostLines }).stepUm }
  return (
    <section class="stack" aria-labelledby="side-title">
      <div class="section-head">
        <h2 id="side-title">{w.sideTitle}</h2>
      </div>
      {scale === undefined ? null : (
        <p class="small soft">
          {w.scale(endText(scale.lowUm), endText(scale.highUm), stepText(scale.stepUm))}
        </p>
      )}
      <p class="small soft">{words.wholeFace.legend}</p>
      <div class="faces-side">
        <Side
          name={w.earlier}
          id="first"
          listed={first}
          laid={comparison.first}
          turnDeg={null}
          {...{ scale, orderNumber }}
        />
        <Side
          name={w.later}
          id="second"
          listed={second}
          laid={comparison.second}
          turnDeg={comparison.isTurned ? (comparison.turn?.turnDeg ?? null) : null}
          {...{ scale, orderNumber }}
        />
      </div>
    </section>
  )
}

const Side: FC<{
  name: string
  id: string
  listed: ListedReading
  laid: LaidFace
  turnDeg: number | null
  scale: HeightScale | undefined
  orderNumber: string
}> = ({ name, id, listed, laid, turnDeg, scale, orderNumber }) => {
  const w = words.wholeFaces
  const { reading } = listed
  const turn = turnDeg === null ? 0 : Math.round(turnDeg) % 360
  return (
    <article class="card stack whole-face-narrow" aria-labelledby={`${id}-title`}>
      <header>
        <p class="soft">{name}</p>
        <h3 id={`${id}-title`}>{stateText(listed)}</h3>
        <p class="small soft">
          {`${minuteText(reading.recordedAt)}, ${reading.recordedByName}, ${words.wholeFace.kind[reading.wholeFace.source.kind]}`}
        </p>
      </header>
      <p class="face-figure strong">{flatnessText(listed)}</p>
      <WholeFaceFigure
        id={id}
        scale={scale}
        hasLegend={false}
        wholeFace={{ ...laid, source: reading.wholeFace.source }}
      />
      {turn === 0 ? null : <p class="small">{w.laidTurned(String(turn))}</p>}
      {laid.isUpsideDown ? <p class="small">{w.laidUpsideDown}</p> : null}
      <p>
        <a
          class="link-line"
          href={`/work-orders/${orderNumber}/results/flatness-reading/${reading.id}`}
        >
          {w.openResult}
        </a>
      </p>
    </article>
  )
}

function endText(um: number): string {
  return figure(um, { decimals: 2 }).text
}

function stepText(stepUm: number): string {
  return figure(stepUm, 'as-entered').text
}
