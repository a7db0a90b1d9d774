import type { FC } from 'hono/jsx'
import type { CertifiedWholeFace } from '../../src/domain/certified-results.ts'
import { mapOfWholeFace } from '../../src/domain/map-of-whole-face.ts'
import { toldMap } from '../../src/domain/told-map.ts'
import type { WholeFace } from '../../src/domain/whole-face.ts'
import { drawnRatio } from '../../src/plots/drawn-ratio.ts'
import { type HeightScale, wholeFaceDrawings } from '../../src/plots/whole-face-drawings.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { wholeFaceAlternatives } from '../words/en/whole-face-alternatives.ts'
import { heightText, wholeFaceTexts } from '../words/en/whole-face-texts.ts'
import { words } from '../words/en.ts'

/** What was read with a grid of lines: of a record, or of a certificate. */
type LineGrid = {
  readonly source?: WholeFace['source']
  readonly lineGridBands?: CertifiedWholeFace['lineGridBands']
}

/** The drawings of a whole face: contours, across the land and around it, and how to read them. */
export const WholeFaceFigure: FC<{
  wholeFace: Pick<WholeFace, 'surface' | 'outerDiameterMm' | 'isSignKnown'> & LineGrid
  /** One of a kind on the page. */
  id: string
  scale?: HeightScale | undefined
  /** False where the page explains it once for several. */
  hasLegend?: boolean
}> = ({ wholeFace, id, scale, hasLegend = true }) => {
  const w = words.wholeFace
  const map = mapOfWholeFace(wholeFace)
  if (map === null) return <LineGridText {...wholeFace} />
  const drawings = wholeFaceDrawings(map, wholeFaceTexts, scale)
  const told = wholeFaceAlternatives(toldMap(map))
  const ratio = (map.radii[0] as number) / (map.radii.at(-1) as number)
  const isWider = drawnRatio(ratio) < ratio
  const legend = [hasLegend ? w.legend : '', isWider ? w.drawnWider : ''].join(' ').trim()
  return (
    <div class="whole-face">
      <figure class="whole-face-map">
        <SvgDrawing drawing={drawings.map} id={`${id}-map`} title={told.map} />
      </figure>
      <figure class="whole-face-profile">
        <figcaption class="strong">{w.acrossTitle}</figcaption>
        <SvgDrawing drawing={drawings.across} id={`${id}-across`} title={told.across} />
      </figure>
      <figure class="whole-face-profile">
        <figcaption class="strong">{w.aroundTitle}</figcaption>
        <SvgDrawing drawing={drawings.around} id={`${id}-around`} title={told.around} />
      </figure>
      <div class="whole-face-words small">
        {legend === '' ? null : <p class="soft">{legend}</p>}
        {wholeFace.isSignKnown ? null : <p>{w.upsideDown}</p>}
      </div>
    </div>
  )
}

const LineGridText: FC<LineGrid> = ({ source, lineGridBands }) => {
  const { lineGrid } = words.wholeFace
  if (lineGridBands !== undefined) {
    return <p>{lineGrid(lineGridBands.oneWay.text, lineGridBands.otherWay.text)}</p>
  }
  if (source?.kind !== 'line-grid') return null
  return <p>{lineGrid(heightText(source.oneWayBands), heightText(source.otherWayBands))}</p>
}
