import { bandAreas } from './band-areas.ts'
import { type BandPattern, gapBands } from './band-surface.ts'
import type { Drawing, PathShape } from './drawing.ts'
import { type RingArea, ringArea } from './ring-area.ts'

/**
 * The picture of a light-band pattern on the ring of a face, as it looks through the optical
 * flat: bright land, soft dark bands where the air gap is a whole number of half wavelengths.
 * Line of contact at the bottom, wedge opening upwards (see gapBands): convex bands bulge up,
 * concave bands bulge down. One path a band and tone, its `part` named by the order of the band.
 *
 * @param options.pattern what is seen
 * @param options.sizePx width and height, px, 48 to 1000
 * @param options.innerRatio bore over rim diameter, 0.2 to 0.9 (default 0.42)
 * @returns the drawing; the same every time
 * @throws RangeError outside these ranges
 * Validity: a model face, drawn to be told apart from the others, not a reading.
 * @example bandPicture({ pattern: 'straight', sizePx: 100 }).widthPx // 100
 */
export function bandPicture(options: {
  readonly pattern: BandPattern
  readonly sizePx: number
  readonly innerRatio?: number
}): Drawing {
  const { pattern, sizePx, innerRatio = 0.42 } = options
  if (!(sizePx >= 48 && sizePx <= 1000)) {
    throw new RangeError(`bandPicture requires sizePx from 48 to 1000, got ${sizePx}`)
  }
  if (!(innerRatio >= 0.2 && innerRatio <= 0.9)) {
    throw new RangeError(`bandPicture requires innerRatio from 0.2 to 0.9, got ${innerRatio}`)
  }
  const key = `${pattern} ${sizePx} ${innerRatio}`
  const kept = drawn.get(key) ?? draw(pattern, sizePx, innerRatio)
  if (drawn.size < keptCount) drawn.set(key, kept)
  return kept
}

/** Pictures take 20 ms each and never change: the few that pages and documents use are kept. */
const drawn = new Map<string, Drawing>()
const keptCount = 64

function draw(pattern: BandPattern, sizePx: number, innerRatio: number): Drawing {
  const ring = ringArea({ sizePx, innerRatio })
  const marks =
    pattern === 'unreadable' ? patches(ring) : bandAreas(ring, (x, y) => gapBands(pattern, x, y))
  return {
    widthPx: sizePx,
    heightPx: sizePx,
    shapes: [
      { kind: 'path', d: ring.edges, fill: 'bright', part: 'land' },
      ...marks,
      { kind: 'path', d: ring.edges, stroke: 'ink', strokePx: 1.5, part: 'edges' },
    ],
  }
}

/** Dirt, a matt or a wet face: blotches without any order, from a sum of fixed waves. */
function patches(ring: RingArea): readonly PathShape[] {
  const cloud = ring.sampled(
    (x, y) =>
      Math.sin(5.1 * x + 2.3 * y + 0.4) +
      Math.sin(3.7 * y - 4.4 * x + 1.9) +
      Math.sin(8.9 * x + 7.3 * y + 2.2) * 0.9 +
      Math.sin(10.7 * y - 9.1 * x + 5.1) * 0.8 +
      Math.sin(17.3 * x - 12.9 * y + 0.7) * 0.5,
  )
  const above = (level: number): string => ring.pathOf(cloud, (value) => value - level)
  return [
    { kind: 'path', d: above(0.3), fill: 'half', part: 'smear' },
    { kind: 'path', d: above(2), fill: 'dark', part: 'spot' },
  ]
}
