import type { FC } from 'hono/jsx'
import type { CertifiedTrack } from '../../src/domain/certified-strip.ts'
import { wornTrackPicture } from '../../src/plots/worn-track-picture.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { trackTexts } from '../words/en/strip-texts.ts'
import { wornTrackOf } from '../words/en/worn-track-texts.ts'
import { words } from '../words/en.ts'

const widthPx = 320

/** The nose over its worn track, beside the movement that surveys found. */
export const TrackPicture: FC<{ track: CertifiedTrack; id: string }> = ({ track, id }) => {
  const { read, follows } = trackTexts(track)
  const title = `${words.wearTrack.drawing}: ${[...read, ...follows].join('; ')}`
  return (
    <figure>
      <SvgDrawing drawing={wornTrackPicture(wornTrackOf(track, widthPx))} id={id} title={title} />
    </figure>
  )
}
