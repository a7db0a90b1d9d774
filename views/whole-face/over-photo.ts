import type { FacePhoto } from '../../src/domain/face-photo.ts'
import type { WholeFace } from '../../src/domain/whole-face.ts'
import type { Drawing } from '../../src/plots/drawing.ts'
import { gridOverlay } from '../../src/plots/grid-overlay.ts'
import { seenOverlay } from '../../src/plots/seen-overlay.ts'

/** What lies over the photograph of a record: bands, marks or lines; null for a combined one. */
export function overPhoto(
  photo: Pick<FacePhoto, 'widthPx' | 'heightPx'>,
  { seen, source }: Pick<WholeFace, 'seen' | 'source'>,
): Drawing | null {
  if (source.kind === 'combined') return null
  if (source.kind === 'line-grid') return gridOverlay({ ...photo, ...source })
  const bandLines = seen?.bandLines ?? []
  return seenOverlay({
    widthPx: photo.widthPx,
    heightPx: photo.heightPx,
    outer: seen?.outer ?? source.outer,
    inner: seen?.inner ?? source.inner,
    bandLines,
    marks: source.kind === 'marked' ? source.points : [],
    doubtfulDeg: seen?.doubtfulDeg ?? [],
    arrowsDeg: null,
    arrowTexts: ['', ''],
  })
}
