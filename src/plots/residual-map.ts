import type { ResidualMap } from '../science/photo/photo-reading.ts'
import type { Drawing, Shape } from './drawing.ts'
import { drawnRatio } from './drawn-ratio.ts'
import { boxPath, outlinePath, type PointPx } from './path-data.ts'
import { roundPx } from './round-px.ts'

/** From which share of the swing of the bands a cell bears a block, and how long its sides are. */
export const residualSteps = [0.05, 0.1, 0.2] as const
const sides = [0.34, 0.64, 1] as const
const marginPx = 6
const keyRowPx = 20
const swatchPx = 13
const textPx = 12

/** What stands in the key under the map. */
export interface ResidualTexts {
  readonly from: (share: number) => string
  readonly unseen: string
}

/**
 * What a fit leaves unexplained, ring by ring and sector by sector as the face lies in the
 * photograph: the larger the block in a cell, the more its light differs. What was not seen is
 * crossed. A key stands below. Nothing depends on colour or tone. A land narrower than 0.62 is drawn wider: see drawnRatio.
 *
 * @param map as it was stored
 * @param sizePx width, px, 120 to 800; the key is added below
 * @param texts of the key
 * @returns the drawing
 * @throws RangeError for a size out of range
 */
export function residualPicture(map: ResidualMap, sizePx: number, texts: ResidualTexts): Drawing {
  if (!(sizePx >= 120 && sizePx <= 800)) {
    throw new RangeError(`residualPicture requires sizePx from 120 to 800, got ${sizePx}`)
  }
  const { ringCount, sectorCount, from, to, shares } = map
  const middle = sizePx / 2
  const rim = middle - marginPx
  const bore = rim * drawnRatio(from / to)
  const at = (ring: number, sector: number): PointPx => {
    const r = bore + ((rim - bore) * ring) / ringCount
    const angle = (2 * Math.PI * sector) / sectorCount
    return { x: middle + r * Math.cos(angle), y: middle - r * Math.sin(angle) }
  }
  const blocks: string[] = sides.map(() => '')
  let crossed = ''
  shares.forEach((share, index) => {
    const [ring, sector] = [Math.floor(index / sectorCount), index % sectorCount]
    const cornersOf = (side: number): Corners => {
      const [low, high] = [0.5 - side / 2, 0.5 + side / 2]
      return [
        at(ring + low, sector + low),
        at(ring + high, sector + low),
        at(ring + high, sector + high),
        at(ring + low, sector + high),
      ]
    }
    if (share === null) {
      crossed += crossOf(cornersOf(1))
      return
    }
    const step = residualSteps.findLastIndex((least) => Math.abs(share) >= least)
    const side = sides[step]
    if (side !== undefined) blocks[step] += outlinePath(cornersOf(side), true)
  })
  const circle = (ring: number) =>
    outlinePath(
      Array.from({ length: sectorCount }, (_, sector) => at(ring, sector)),
      true,
    )
  const areas = blocks.flatMap((d, step): Shape[] =>
    d === '' ? [] : [{ kind: 'path', d, fill: 'ink', part: `from ${residualSteps[step]}` }],
  )
  return {
    widthPx: sizePx,
    heightPx: sizePx + (sides.length + 1) * keyRowPx + marginPx,
    shapes: [
      ...areas,
      ...(crossed === ''
        ? []
        : [{ kind: 'path', d: crossed, stroke: 'soft', part: 'unseen' } as const]),
      { kind: 'path', d: `${circle(0)}${circle(ringCount)}`, stroke: 'ink', strokePx: 1.5 },
      ...keyOf(sizePx, texts),
    ],
  }
}

type Corners = readonly [PointPx, PointPx, PointPx, PointPx]

function crossOf([a, b, c, d]: Corners): string {
  return `${outlinePath([a, c], false)}${outlinePath([b, d], false)}`
}

/** One row a block, and one for what was not seen. */
function keyOf(topPx: number, texts: ResidualTexts): Shape[] {
  const rows = [...residualSteps.map(texts.from), texts.unseen]
  return rows.flatMap((text, row): Shape[] => {
    const [x, y] = [marginPx, topPx + row * keyRowPx + marginPx]
    const [right, bottom] = [x + swatchPx, y + swatchPx]
    const frame = boxPath({ x, y, width: swatchPx, height: swatchPx })
    const cross = crossOf([
      { x, y },
      { x: right, y },
      { x: right, y: bottom },
      { x, y: bottom },
    ])
    const side = sides[row]
    return [
      { kind: 'path', d: frame, stroke: 'soft' },
      side === undefined
        ? { kind: 'path', d: cross, stroke: 'soft' }
        : { kind: 'path', d: blockIn(x, y, side), fill: 'ink' },
      {
        kind: 'text',
        x: right + 7,
        y: roundPx(bottom - 2),
        text,
        sizePx: textPx,
        anchor: 'start',
        tone: 'ink',
      },
    ]
  })
}

function blockIn(x: number, y: number, side: number): string {
  const [sizePx, gapPx] = [side * swatchPx, ((1 - side) / 2) * swatchPx]
  return boxPath({ x: x + gapPx, y: y + gapPx, width: sizePx, height: sizePx })
}
