import { type BandPattern, modelFace } from './band-surface.ts'
import type { Drawing, Shape } from './drawing.ts'
import { outlinePath, type PointPx } from './path-data.ts'

const widthPx = 132
const heightPx = 76
const innerRatio = 0.42
const marginPx = 6
const stepCount = 60

/**
 * A model face and the flat over it, cut along a line through the middle, heights much larger than
 * they are: the face below, the flat above, and a stroke between them wherever the air is a whole
 * number of half wavelengths, where a dark band is seen from above.
 *
 * @param options.pattern any pattern with bands
 * @param options.along across the line of contact is `up`, along it is `across`
 * @returns the drawing, 132 by 76 px; the same every time
 * Validity: a model face; only differences of the gap are right, the flat is drawn just clear.
 * @example sectionPicture({ pattern: 'convex', along: 'up' }).heightPx // 76
 */
export function sectionPicture(options: {
  readonly pattern: Exclude<BandPattern, 'unreadable'>
  readonly along: 'across' | 'up'
}): Drawing {
  const { pattern, along } = options
  const { wedgeBands, heightBands } = modelFace(pattern)
  const faceAt = (t: number): number => (along === 'up' ? heightBands(0, t) : heightBands(t, 0))
  const wedgeAt = (t: number): number => (along === 'up' ? wedgeBands * t : 0)
  const gapAt = (t: number): number => wedgeAt(t) - faceAt(t)
  const lands = [-1, innerRatio].map((from) => steps(from, from + 1 - innerRatio))
  const all = lands.flat()
  const lowestFace = Math.min(...all.map(faceAt))
  const clear = 0.4 - Math.min(...all.map(gapAt))
  const flatAt = (t: number): number => wedgeAt(t) + clear
  const highest = Math.max(flatAt(-1), flatAt(1))
  const scale = (heightPx - 3 * marginPx) / Math.max(4, highest - lowestFace)
  const toPx = (t: number, bands: number): PointPx => ({
    x: widthPx / 2 + (widthPx / 2 - marginPx) * t,
    y: heightPx - 2 * marginPx - scale * (bands - lowestFace),
  })
  const flat = [-1, 1].map((t) => toPx(t, flatAt(t)))
  return {
    widthPx,
    heightPx,
    shapes: [
      ...lands.flatMap((land) => landShapes(land, faceAt, toPx)),
      ...lands
        .flatMap((land) => darkPlaces(land, gapAt))
        .map((t): Shape => {
          const [low, high] = [toPx(t, faceAt(t)), toPx(t, flatAt(t))]
          const ends = { x1: low.x, y1: low.y, x2: high.x, y2: high.y }
          return { kind: 'line', ...ends, stroke: 'dark', strokePx: 2.5 }
        }),
      { kind: 'path', d: outlinePath(flat, false), stroke: 'ink', strokePx: 2, part: 'flat' },
    ],
  }
}

function steps(from: number, to: number): readonly number[] {
  return Array.from({ length: stepCount + 1 }, (_, i) => from + ((to - from) * i) / stepCount)
}

function landShapes(
  land: readonly number[],
  faceAt: (t: number) => number,
  toPx: (t: number, bands: number) => PointPx,
): readonly Shape[] {
  const top = land.map((t) => toPx(t, faceAt(t)))
  const [first, last] = [top[0], top.at(-1)]
  if (first === undefined || last === undefined) return []
  const foot = [last, first].map(({ x }) => ({ x, y: heightPx - 2 }))
  return [
    { kind: 'path', d: outlinePath([...top, ...foot], true), fill: 'faint', part: 'face' },
    { kind: 'path', d: outlinePath(top, false), stroke: 'ink', strokePx: 1.5, part: 'profile' },
  ]
}

/** Places on a land where the gap is a whole number of bands, between neighbouring steps. */
function darkPlaces(land: readonly number[], gapAt: (t: number) => number): readonly number[] {
  return land.slice(1).flatMap((to, index) => {
    const from = land[index] ?? to
    const [a, b] = [gapAt(from), gapAt(to)]
    const order = Math.ceil(Math.min(a, b))
    if (a === b || order > Math.max(a, b) || order === a) return []
    return [from + ((order - a) / (b - a)) * (to - from)]
  })
}
