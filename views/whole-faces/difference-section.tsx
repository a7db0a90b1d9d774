import type { FC } from 'hono/jsx'
import type { FaceDifference } from '../../src/domain/compare-whole-faces.ts'
import { figure } from '../../src/domain/figure.ts'
import { flatnessMap } from '../../src/plots/flatness-map.ts'
import { peakAndValley } from '../../src/science/surface/peak-and-valley.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { wholeFaceTexts } from '../words/en/whole-face-texts.ts'
import { words } from '../words/en.ts'
import type { ComparedPair } from './page-props.ts'
import { umText } from './um-text.ts'

const mapPx = 400

/** What one map has that the other has not, and how far that can be trusted. */
export const DifferenceSection: FC<{ pair: ComparedPair }> = ({ pair }) => {
  const w = words.wholeFaces
  const { comparison, isBeforeAfter, between } = pair
  const { difference } = comparison
  return (
    <section class="card stack" aria-labelledby="difference-title">
      <h2 id="difference-title">{isBeforeAfter ? w.tookTitle : w.differenceTitle}</h2>
      {between.isNewRing ? <p class="notice notice-note">{w.newRing}</p> : null}
      <TurnText pair={pair} />
      {typeof difference === 'string' ? (
        <p>{w.noDifference[difference]}</p>
      ) : (
        <Difference difference={difference} isBeforeAfter={isBeforeAfter} />
      )}
      {isBeforeAfter ? <TookText pair={pair} /> : null}
    </section>
  )
}

const Difference: FC<{ difference: FaceDifference; isBeforeAfter: boolean }> = (props) => {
  const w = words.wholeFaces
  const { map, peakToValleyUm, expandedPictureUm, isWithin } = props.difference
  const um = umText(peakToValleyUm)
  const drawing = flatnessMap({ ...wholeFaceTexts, heightText: umText, map, sizePx: mapPx })
  const sentence = isWithin ? w.mapsAgree : w.mapsDiffer
  return (
    <div class="faces-difference">
      <figure>
        <SvgDrawing
          drawing={drawing}
          id="difference"
          title={props.isBeforeAfter ? w.tookMap(um) : w.differenceMap(um)}
        />
      </figure>
      <div class="stack">
        <p>{(props.isBeforeAfter ? w.tookUneven : sentence)(um, umText(expandedPictureUm))}</p>
        <p class="small soft">{props.isBeforeAfter ? w.tookOf : w.differenceOf}</p>
      </div>
    </div>
  )
}

const TurnText: FC<{ pair: ComparedPair }> = ({ pair: { comparison, isBeforeAfter } }) => {
  const w = words.wholeFaces
  const { turn, isTurned } = comparison
  if (turn === null) return null
  if (!isTurned) return <p>{isBeforeAfter ? w.beforeAfter : w.asTaken}</p>
  const likeness = (value: number | null) =>
    value === null ? '' : figure(value, { decimals: 2 }).text
  const deg = String(Math.round(turn.turnDeg) % 360)
  return (
    <>
      {isBeforeAfter ? <p>{w.beforeAfterTurned}</p> : null}
      <p>{w.turn[turn.standing](deg, likeness(turn.likeness), likeness(turn.rivalLikeness))}</p>
    </>
  )
}

/** Heights of the log, and how unevenly they were taken. */
const TookText: FC<{ pair: ComparedPair }> = ({ pair: { comparison, between } }) => {
  const w = words.wholeFaces
  const { difference } = comparison
  const { cycleCount, removedUm } = between
  if (cycleCount === 0) return <p>{w.tookNoCycle}</p>
  if (removedUm === null) return <p>{w.tookUnknown(cycleCount)}</p>
  if (typeof difference === 'string') {
    return <p>{w.tookStockAlone(cycleCount, stockText(removedUm))}</p>
  }
  const { peak, valley } = peakAndValley(difference.map)
  const at = (um: number) => stockText(removedUm + um)
  return <p>{w.tookStock(cycleCount, stockText(removedUm), at(valley.height), at(peak.height))}</p>
}

function stockText(um: number): string {
  return figure(um, { decimals: 1 }).text
}
