import { bandEnd } from './edges/band-end.ts'
import { bandedLand } from './edges/banded-land.ts'
import { lightSteps } from './edges/light-steps.ts'
import { likelyMiddles } from './edges/likely-middles.ts'
import { otherEdge } from './edges/other-edge.ts'
import { type RingSeen, ringsAround } from './edges/rings-around.ts'
import { shrinkChannel } from './edges/shrink-channel.ts'
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

/** What swings on the land at least, over what swings just beyond each edge. */
const leastRatio = 1.5
const finePx = 1400
const coarsePx = 700
const middleCount = 3
const ringCount = 6
/** How far an edge followed by steps in light may lie from where bands end. */
const mostDisagreement = 0.012
/** What both edges must show, by how many of them could be followed by steps in light. */
const demands = [
  { worth: 4.4, evenness: 0.8, apart: 0.008 },
  { worth: 3, evenness: 0.7, apart: 0.008 },
  { worth: 1.5, evenness: 0.3, apart: 0.0105 },
] as const

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
  return ratio > 0.3 && ratio < 0.965 && off < 0.03
}

function weigh(channel: LightChannel, edges: FoundEdges, share: number): Candidate[] {
  const land = bandedLand(channel, edges)
  if (land === null || land.swing < 0.01) return []
  const { outerRatio, innerRatio, evenness } = land
  const worth = Math.min(outerRatio, innerRatio, 6) * Math.min(1, 1.6 * evenness)
  return [{ ...edges, worth: worth * share * share }]
}

/** The lands that may end at a ring: another ring is the other edge, or where bands end. */
function guesses(channel: LightChannel, rings: readonly RingSeen[], ring: RingSeen): Candidate[] {
  const { ellipse, share } = ring
  const paired = rings.flatMap((one) => {
    if (!canPair(ellipse, one.ellipse)) return []
    return weigh(channel, { outer: ellipse, inner: one.ellipse }, share * one.share)
  })
  const alone = (['outer', 'inner'] as const).flatMap((side) => {
    const other = otherEdge(channel, ellipse, side)
    if (other === null) return []
    const [outer, inner] = side === 'outer' ? [ellipse, other.ellipse] : [other.ellipse, ellipse]
    return weigh(channel, { outer, inner }, share * 0.8)
  })
  return [...paired, ...alone]
}

/** One edge to a part of a pixel: by its steps in light, else where bands end; null if neither. */
function followed(channel: LightChannel, near: Ellipse, side: 'outer' | 'inner') {
  const end = bandEnd(channel, near, side)
  if (end === null) return null
  const by = side === 'outer' ? 1 + end : 1 - end
  const edge = { ...near, rx: near.rx * by, ry: near.ry * by }
  const { isSnapped, ellipse } = snapEdge(channel, edge, side)
  if (!isSnapped) return { ellipse: edge, isSnapped }
  return distance(edge, ellipse) < mostDisagreement ? { ellipse, isSnapped } : null
}

/** Both edges of a guess, where all that was seen of them agrees; else null. */
function confirmed(channel: LightChannel, guess: Candidate): FoundEdges | null {
  const outer = followed(channel, guess.outer, 'outer')
  const inner = followed(channel, guess.inner, 'inner')
  if (outer === null || inner === null) return null
  const edges = { outer: outer.ellipse, inner: inner.ellipse }
  const demand = demands[Number(outer.isSnapped) + Number(inner.isSnapped)]
  const land = bandedLand(channel, edges)
  if (demand === undefined || land === null || !canPair(edges.outer, edges.inner)) return null
  const apart = Math.hypot(edges.outer.cx - edges.inner.cx, edges.outer.cy - edges.inner.cy)
  if (apart > demand.apart * meanRadius(edges.outer)) return null
  if (guess.worth < demand.worth || land.evenness < demand.evenness) return null
  return Math.min(land.outerRatio, land.innerRatio) < leastRatio ? null : edges
}

/**
 * Finds the edges of a land with bands in a picture, without being told where it is.
 *
 * Edges look at the middle of their ring; around it closed curves of steps in light are followed;
 * of all pairs that one is taken between which bands lie everywhere and beyond which there are none.
 *
 * @param picture upright
 * @returns both edges; null where none could be followed all around: whoever knows must set them
 * Validity: tried on synthetic photographs alone. Of 128 that no limit was chosen on, 82 were found
 *   within 1 % of the radius (of 60 ordinary ones 52), 2 within 2 %, 44 were not found.
 * Source: own method; count of edge normals after P. V. C. Hough, from memory.
 * @example findEdges({ data: new Uint8Array(3 * 64 * 64), width: 64, height: 64 }) // null
 */
export function findEdges(picture: Picture): FoundEdges | null {
  const fine = shrinkPicture(picture, finePx)
  const by = Math.max(1, Math.ceil(Math.max(fine.width, fine.height) / coarsePx))
  const coarse = shrinkChannel(fine, by)
  const steps = lightSteps(coarse)
  const middles = likelyMiddles(steps, middleCount)
  const rings = withoutTwins(middles.flatMap((middle) => ringsAround(steps, middle, ringCount)))
  const best = rings
    .flatMap((ring) => guesses(coarse, rings, ring))
    .sort((a, b) => b.worth - a.worth)
  for (const { outer, inner, worth } of best.slice(0, 4)) {
    const found = confirmed(fine, {
      outer: scaleEllipse(outer, by),
      inner: scaleEllipse(inner, by),
      worth,
    })
    if (found === null) continue
    const back = 1 / fine.scale
    return { outer: scaleEllipse(found.outer, back), inner: scaleEllipse(found.inner, back) }
  }
  return null
}
