import type { FC } from 'hono/jsx'
import type { ComparedTrack } from '../../src/domain/compared-tracks.ts'
import { figure } from '../../src/domain/figure.ts'
import { wornTrackPicture } from '../../src/plots/worn-track-picture.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { totalText, umText } from '../words/en/alignment-texts.ts'
import { words } from '../words/en.ts'

const widthPx = 340

/** Each worn track drawn under its nose, beside the movement that surveys found. */
export const TrackSection: FC<{ tracks: readonly ComparedTrack[] }> = ({ tracks }) => {
  const { alignment: w, trade } = words
  if (tracks.length === 0) return null
  return (
    <section class="stack">
      <h2>{w.trackTitle}</h2>
      <p class="soft">{w.trackNote}</p>
      {tracks.map((track) => {
        const { comparison } = track
        const verdict = w.verdict[comparison.verdict]
        const counted = comparison.counted.map(
          (one) => `${trade.characteristic[one.characteristic]} ${w.mm(totalText(one.totalUm))}`,
        )
        return (
          <div class="card stack">
            <h3>{w.trackOf(trade.faceKind[track.faceKind].toLowerCase())}</h3>
            <figure>
              <SvgDrawing
                drawing={pictureOf(track)}
                id={`track-${track.id}`}
                title={[...Object.values(textsOf(track)), verdict].join(', ')}
              />
            </figure>
            <p class="strong">{verdict}</p>
            {counted.length === 0 ? null : <p>{w.counted(counted)}</p>}
          </div>
        )
      })}
    </section>
  )
}

function pictureOf(track: ComparedTrack) {
  const { noseWidthMm, trackWidthMm, faceWidthMm, comparison } = track
  const { movementUm, found } = comparison
  const widths = { noseWidthMm, trackWidthMm, faceWidthMm }
  return wornTrackPicture({ widthPx, ...widths, movementUm, found, texts: textsOf(track) })
}

function textsOf({ noseWidthMm, trackWidthMm, comparison }: ComparedTrack) {
  const w = words.alignment
  const { movementUm, found } = comparison
  const mm = (value: number) => figure(value, 'as-entered').text
  const size = umText(Math.abs(movementUm))
  const least = found === null ? '' : umText(found.leastUm)
  const most = found === null ? '' : umText(found.mostUm)
  return {
    nose: w.nose(mm(noseWidthMm)),
    track: w.track(mm(trackWidthMm)),
    noseSwings: w.noseSwings,
    movement: movementUm < 0 ? w.narrower(size) : w.wider(size),
    found:
      found === null ? w.foundNone : least === most ? w.foundOne(least) : w.foundRange(least, most),
  }
}
