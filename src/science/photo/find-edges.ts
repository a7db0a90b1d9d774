import { bandedLand } from './edges/banded-land.ts'
import { lightSteps } from './edges/light-steps.ts'
import { likelyMiddles } from './edges/likely-middles.ts'
import { type RingSeen, ringsAround } from './edges/rings-around.ts'
import { shrinkPicture } from './edges/shrink-picture.ts'
import type { Ellipse } from './ellipse.ts'
import type { LightChannel } from './light-at.ts'
import type { Picture } from './linear-channels.ts'
import { scaleEllipse } from './scale-ellipse.ts'
import { snapEdge } from './snap-edge.ts'

/** Both edges of a land, in pixels of the picture. */
export interface FoundEdges {
  readonly outer: Ellipse
  readonly inner: Ellipse
}

interface Candidate extends FoundEdges {
  readonly worth: number
}

const longestPx = 800
const middleCount = 4
const ringCount = 8

const meanRadius = ({ rx, ry }: Ellipse) => Math.sqrt(rx * ry)

/** How far two ellipses lie apart, in units of the first one's radius. */
function distance(a: Ellipse, b: Ellipse): number {
  const off = Math.hypot(a.cx - b.cx, a.cy - b.cy)
  return Math.max(off, Math.abs(meanRadius(a) - meanRadius(b))) / meanRadius(a)
}

function withoutTwins(rings: readonly RingSeen[]): RingSeen[] {
  const kept: RingSeen[] = []
  for (const ring of [...rings].sort((a, b) => b.share - a.share)) {
    if (kept.every((one) => distance(one.ellipse, ring.ellipse) > 0.008)) kept.push(ring)
  }
  return kept
}

/** Whether one can be the inner edge of a land that the other is the outer edge of. */
function canPair(outer: Ellipse, inner: Ellipse): boolean {
  const ratio = meanRadius(inner) / meanRadius(outer)
  const off = Math.hypot(outer.cx - inner.cx, outer.cy - inner.cy) / meanRadius(outer)
  return ratio > 0.3 && ratio < 0.965 && off < 0.05
}

function weigh(channel: LightChannel, edges: FoundEdges): Candidate | null {
  const land = bandedLand(channel, edges)
  if (land === null || land.swing < 0.01) return null
  const { outerRatio, innerRatio, evenness } = land
  const worth = Math.min(outerRatio, innerRatio, 6) * Math.min(1, 1.6 * evenness)
  return { ...edges, worth }
}

/**
 * Finds the edges of a land with bands in a picture, without being told where it is.
 *
 * Edges look at the middle of their ring; around it closed curves of steps in light are followed;
 * of all pairs that one is taken between which bands lie everywhere and beyond which there are none.
 *
 * @param picture upright
 * @returns both edges; null where none could be followed all around: whoever knows must set them
 * Validity: of 35 synthetic photographs with and without honest answers 15 were found, each within
 *   1 % of the radius, and 20 were not; none was wrong.
 * Source: own method; count of edge normals after P. V. C. Hough, from memory.
 * @example findEdges({ data: new Uint8Array(3 * 64 * 64), width: 64, height: 64 }) // null
 */
export function findEdges(picture: Picture): FoundEdges | null {
  const channel = shrinkPicture(picture, longestPx)
  const steps = lightSteps(channel)
  const middles = likelyMiddles(steps, middleCount)
  const rings = withoutTwins(middles.flatMap((middle) => ringsAround(steps, middle, ringCount)))
  const pairs = rings.flatMap(({ ellipse: outer }) =>
    rings.flatMap(({ ellipse: inner }) => {
      const pair = canPair(outer, inner) ? weigh(channel, { outer, inner }) : null
      return pair === null ? [] : [pair]
    }),
  )
  const best = pairs.toSorted((a, b) => b.worth - a.worth)
  for (const pair of best.slice(0, 3)) {
    const outer = snapEdge(channel, pair.outer, 'outer')
    const inner = snapEdge(channel, pair.inner, 'inner')
    if (!outer.isSnapped || !inner.isSnapped) continue
    const back = 1 / channel.scale
    return { outer: scaleEllipse(outer.ellipse, back), inner: scaleEllipse(inner.ellipse, back) }
  }
  return null
}
