import type { WholeFaceAnswer } from '../../src/domain/whole-face-answer.ts'
import type { Drawing } from '../../src/plots/drawing.ts'
import { seenOverlay } from '../../src/plots/seen-overlay.ts'
import { facePhotoWords } from '../words/en/face-photo.ts'
import { arrowDeg } from './arrow-deg.ts'
import type { FacePhotoForm } from './page-props.ts'

/** What was seen, to be laid over the photograph; null where nothing was. */
export function overlayOf(
  { photo }: Pick<FacePhotoForm, 'photo'>,
  outcome: WholeFaceAnswer['outcome'],
): Drawing | null {
  if (outcome.kind !== 'figures') return null
  const { seen } = outcome.wholeFace
  if (seen === null || seen.bandLines.length === 0) return null
  const [a, b] = facePhotoWords.arrow
  return seenOverlay({
    ...photo,
    ...seen,
    arrowsDeg: arrowDeg(seen.tiltDirectionDeg),
    arrowTexts: [a, b],
  })
}
