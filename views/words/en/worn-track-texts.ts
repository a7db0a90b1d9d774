import type { CertifiedTrack } from '../../../src/domain/certified-strip.ts'
import { alignmentWords } from './alignment.ts'

/** What the drawing of a worn track shows, the same on page and document. */
export function wornTrackOf(one: CertifiedTrack, widthPx: number) {
  const w = alignmentWords
  const { noseWidthMm, trackWidthMm, movementUm, foundUm } = one
  const size = movementUm.text.replace('−', '')
  return {
    widthPx,
    noseWidthMm: noseWidthMm.value,
    trackWidthMm: trackWidthMm.value,
    faceWidthMm: null,
    movementUm: movementUm.value,
    found: foundUm === null ? null : { leastUm: foundUm.least.value, mostUm: foundUm.most.value },
    texts: {
      nose: w.nose(noseWidthMm.text),
      track: w.track(trackWidthMm.text),
      noseSwings: w.noseSwings,
      movement: movementUm.value < 0 ? w.narrower(size) : w.wider(size),
      found: foundText(foundUm),
    },
  }
}

function foundText(found: CertifiedTrack['foundUm']): string {
  const w = alignmentWords
  if (found === null) return w.foundNone
  const { least, most } = found
  return least.text === most.text ? w.foundOne(least.text) : w.foundRange(least.text, most.text)
}
