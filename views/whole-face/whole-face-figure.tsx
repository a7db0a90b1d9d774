import type { FC } from 'hono/jsx'
import { mapOfWholeFace } from '../../src/domain/map-of-whole-face.ts'
import type { WholeFace } from '../../src/domain/whole-face.ts'
import { drawnRatio } from '../../src/plots/drawn-ratio.ts'
import { type HeightScale, wholeFaceDrawings } from '../../src/plots/whole-face-drawings.ts'
import { peakAndValley } from '../../src/science/surface/peak-and-valley.ts'
import { SvgDrawing } from '../components/svg-drawing.tsx'
import { heightText, wholeFaceTexts } from '../words/en/whole-face-texts.ts'
import { words } from '../words/en.ts'

/** The drawings of a whole face: contours, across the land and around it, and how to read them. */
export const WholeFaceFigure: FC<{
  wholeFace: Pick<WholeFace, 'surface' | 'outerDiameterMm' | 'isSignKnown'> & {
    readonly source?: WholeFace['source']
  }
  /** One of a kind on the page. */
  id: string
  scale?: HeightScale | undefined
  /** False where the page explains it once for several. */
  hasLegend?: boolean
}> = ({ wholeFace, id, scale, hasLegend = true }) => {
  const w = words.wholeFace
  const map = mapOfWholeFace(wholeFace)
  if (map === null) return <LineGridText source={wholeFace.source} />
  const drawings = wholeFaceDrawings(map, wholeFaceTexts, scale)
  const { peak, valley } = peakAndValley(map)
  const ratio = (map.radii[0] as number) / (map.radii.at(-1) as number)
  const isWider = drawnRatio(ratio) < ratio
  const legend = [hasLegend ? w.legend : '', isWider ? w.drawnWider : ''].join(' ').trim()
  return (
    <div class="whole-face">
      <figure class="whole-face-map">
        <SvgDrawing
          drawing={drawings.map}
          id={`${id}-map`}
          title={w.mapText(heightText(peak.height), heightText(valley.height))}
        />
      </figure>
      <figure class="whole-face-profile">
        <figcaption class="strong">{w.acrossTitle}</figcaption>
        <SvgDrawing drawing={drawings.across} id={`${id}-across`} title={w.acrossText} />
      </figure>
      <figure class="whole-face-profile">
        <figcaption class="strong">{w.aroundTitle}</figcaption>
        <SvgDrawing drawing={drawings.around} id={`${id}-around`} title={w.aroundText} />
      </figure>
      <div class="whole-face-words small">
        {legend === '' ? null : <p class="soft">{legend}</p>}
        {wholeFace.isSignKnown ? null : <p>{w.upsideDown}</p>}
      </div>
    </div>
  )
}

const LineGridText: FC<{ source: WholeFace['source'] | undefined }> = ({ source }) => {
  if (source?.kind !== 'line-grid') return null
  const bands = (value: number) => heightText(value)
  return <p>{words.wholeFace.lineGrid(bands(source.oneWayBands), bands(source.otherWayBands))}</p>
}
