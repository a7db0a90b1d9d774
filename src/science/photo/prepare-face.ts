import { chooseChannel } from './choose-channel.ts'
import { colourAgreement } from './colour-agreement.ts'
import type { Ellipse } from './ellipse.ts'
import { fitEllipse } from './fit-ellipse.ts'
import type { LightChannel } from './light-at.ts'
import { linearChannels, type Picture } from './linear-channels.ts'
import type { PhotoRefusal } from './photo-refusal.ts'
import { ringMap } from './ring-map.ts'
import { type SnappedEdge, snapEdge } from './snap-edge.ts'

/** An edge as it was set: an ellipse, or 6 or more places on it, in pixels. */
export type EdgeAsSet = Ellipse | readonly (readonly [number, number])[]

/** A land that is ready to be read. */
export interface Face {
  readonly kind: 'face'
  readonly channel: LightChannel
  readonly outer: SnappedEdge
  readonly inner: SnappedEdge
  readonly radiusRatio: number
  /** Short over long axis of the outer edge: the cosine of the angle of view. */
  readonly axisRatio: number
  readonly clippedShare: number
  /** How well the colours agree on where the bands are; see colourAgreement. */
  readonly colourAgreement: number
}

const leastRadiusPx = 150
const leastAxisRatio = 0.93
/** A narrower land is all margin: what an edge blurs is left out on both sides. */
const mostRatio = 0.965
const mostCutShare = 0.02
const mostClippedShare = 0.15

const refused = (
  reason: PhotoRefusal['reason'],
  measured: number | null = null,
  limit: number | null = null,
): PhotoRefusal => ({ kind: 'refused', reason, measured, limit })

const ellipseOf = (edge: EdgeAsSet): Ellipse | null => {
  if (!('length' in edge)) return edge.rx > 0 && edge.ry > 0 ? edge : null
  return edge.length < 6 ? null : fitEllipse(edge)
}

const meanRadius = (ellipse: Ellipse) => Math.sqrt(ellipse.rx * ellipse.ry)

const axisRatioOf = (ellipse: Ellipse) =>
  Math.min(ellipse.rx, ellipse.ry) / Math.max(ellipse.rx, ellipse.ry)

/** Share of the edge that lies outside the picture. */
function cutShare(ellipse: Ellipse, picture: Picture): number {
  const map = ringMap(ellipse)
  let outside = 0
  for (let i = 0; i < 360; i++) {
    const x = Math.cos((i * Math.PI) / 180)
    const y = Math.sin((i * Math.PI) / 180)
    const px = map.cx + map.xx * x + map.xy * y
    const py = map.cy - (map.xy * x + map.yy * y)
    if (px < 0 || py < 0 || px > picture.width - 1 || py > picture.height - 1) outside++
  }
  return outside / 360
}

/** Whether two edges can be those of one ring: one in the other, about the same middle and form. */
function areOneRing(outer: Ellipse, inner: Ellipse): boolean {
  const ratio = meanRadius(inner) / meanRadius(outer)
  const apart = Math.hypot(outer.cx - inner.cx, outer.cy - inner.cy) / meanRadius(outer)
  return ratio > 0.2 && ratio < mostRatio && apart < 0.12
}

/** A followed inner edge must lie as the outer one does; if not, one of them was lost. */
function doAgree(outer: SnappedEdge, inner: SnappedEdge): boolean {
  const size = meanRadius(outer.ellipse)
  const apart = Math.hypot(outer.ellipse.cx - inner.ellipse.cx, outer.ellipse.cy - inner.ellipse.cy)
  const [a, b] = [ringMap(outer.ellipse), ringMap(inner.ellipse)]
  const inSize = size / meanRadius(inner.ellipse)
  const form = Math.hypot((a.xx - a.yy) / 2 - ((b.xx - b.yy) * inSize) / 2, a.xy - b.xy * inSize)
  return apart / size < 0.012 && form / size < 0.0015
}

/**
 * Prepares the land of a picture: fits the edges as they were set, checks what needs no bands, and
 * follows the edges in the picture.
 *
 * @param picture upright
 * @param edges as they were set
 * @returns the land; or a refusal: edges-not-found, face-cut-by-frame, face-too-small,
 *   view-too-oblique, overexposed
 * Source: limits chosen on synthetic photographs.
 * @example prepareFace({ data: new Uint8Array(3), width: 1, height: 1 },
 *   { outer: [], inner: [] }).kind // refused
 */
export function prepareFace(
  picture: Picture,
  edges: { readonly outer: EdgeAsSet; readonly inner: EdgeAsSet },
): Face | PhotoRefusal {
  const outerSet = ellipseOf(edges.outer)
  const innerSet = ellipseOf(edges.inner)
  if (outerSet === null || innerSet === null) return refused('edges-not-found')
  if (!areOneRing(outerSet, innerSet)) return refused('edges-not-found')
  const cut = cutShare(outerSet, picture)
  if (cut > mostCutShare) return refused('face-cut-by-frame', cut, mostCutShare)
  const radius = meanRadius(outerSet)
  if (radius < leastRadiusPx) return refused('face-too-small', radius, leastRadiusPx)
  // Places set by hand are off by up to 2 %; the followed edge is asked again below.
  const axisRatioSet = axisRatioOf(outerSet)
  if (axisRatioSet < leastAxisRatio - 0.02) {
    return refused('view-too-oblique', axisRatioSet, leastAxisRatio)
  }
  const channels = linearChannels(picture)
  const { channel, index, clippedShare } = chooseChannel(channels, {
    outer: outerSet,
    radiusRatio: meanRadius(innerSet) / radius,
  })
  if (clippedShare > mostClippedShare) {
    return refused('overexposed', clippedShare, mostClippedShare)
  }
  let outer = snapEdge(channel, outerSet, 'outer')
  let inner = snapEdge(channel, innerSet, 'inner')
  if (outer.isSnapped && inner.isSnapped && !doAgree(outer, inner)) {
    if (outer.scatter <= inner.scatter) inner = { ...inner, ellipse: innerSet, isSnapped: false }
    else outer = { ...outer, ellipse: outerSet, isSnapped: false }
  }
  // An edge that was lost is sought again from where the other one says that it must be.
  const helped = (lost: SnappedEdge, found: SnappedEdge, side: 'outer' | 'inner') => {
    const scale = meanRadius(lost.ellipse) / meanRadius(found.ellipse)
    const { ellipse } = found
    const near = { ...ellipse, rx: ellipse.rx * scale, ry: ellipse.ry * scale }
    const again = snapEdge(channel, near, side)
    const pair = side === 'inner' ? ([found, again] as const) : ([again, found] as const)
    return again.isSnapped && doAgree(...pair) ? again : { ...lost, ellipse: near }
  }
  if (outer.isSnapped && !inner.isSnapped) inner = helped(inner, outer, 'inner')
  else if (inner.isSnapped && !outer.isSnapped) outer = helped(outer, inner, 'outer')
  const axisRatio = axisRatioOf(outer.ellipse)
  if (axisRatio < leastAxisRatio) return refused('view-too-oblique', axisRatio, leastAxisRatio)
  const radiusRatio = meanRadius(inner.ellipse) / meanRadius(outer.ellipse)
  if (!areOneRing(outer.ellipse, inner.ellipse)) return refused('edges-not-found')
  const agreement = colourAgreement(channels, index, {
    outer: outer.ellipse,
    from: radiusRatio + 0.15 * (1 - radiusRatio),
    to: 1 - 0.15 * (1 - radiusRatio),
  })
  const form = { radiusRatio, axisRatio, clippedShare, colourAgreement: agreement }
  return { kind: 'face', channel, outer, inner, ...form }
}
