import type { Ellipse } from '../ellipse.ts'
import type { LightChannel } from '../light-at.ts'
import { bandSwing } from './band-swing.ts'
import { betweenEdges } from './between-edges.ts'

/** What speaks for two curves being the edges of a land with bands. */
export interface BandedLand {
  /** Swing of light just inside each edge over that just beyond it. */
  readonly outerRatio: number
  readonly innerRatio: number
  /** The smallest swing on the land over the largest: bands lie everywhere. */
  readonly evenness: number
  /** Swing on the middle of the land, in square roots of light. */
  readonly swing: number
}

const directions = 360
/** Swing below which noise and JPEG alone can look like bands. */
const floor = 0.004

const meanRadius = ({ rx, ry }: Ellipse) => Math.sqrt(rx * ry)

/**
 * Weighs whether bands fill the ring between two curves and end at both.
 *
 * @param channel linear light
 * @param edges in pixels, the inner one inside the outer one
 * @returns ratios; null when the curves lie too near to each other or off the picture
 * Source: own measure, tried on synthetic photographs.
 * @example bandedLand({ light: new Float32Array(9), width: 3, height: 3 },
 *   { outer: { cx: 1, cy: 1, rx: 1, ry: 1, rotationDeg: 0 },
 *   inner: { cx: 1, cy: 1, rx: 1, ry: 1, rotationDeg: 0 } }) // null
 */
export function bandedLand(
  channel: LightChannel,
  edges: { readonly outer: Ellipse; readonly inner: Ellipse },
): BandedLand | null {
  const outerPx = meanRadius(edges.outer)
  const widthPx = outerPx - meanRadius(edges.inner)
  if (!(widthPx > 8 && widthPx > 0.04 * outerPx)) return null
  const at = (share: number) => bandSwing(channel, betweenEdges(edges, share, directions))
  // Beside an edge lie a chamfer and the blur of the camera: a few pixels are left out.
  const inwards = Math.min(0.3, Math.max(4, 0.022 * outerPx) / widthPx)
  const outwards = Math.max(5, 0.03 * outerPx) / widthPx
  const within = [inwards, 0.3, 0.4, 0.5, 0.6, 0.7, 1 - inwards].map(at)
  const beyond = [outwards, 1.6 * outwards]
  const outside = beyond.map((off) => at(1 + off))
  const inside = beyond.map((off) => at(-off))
  if (within.some((one) => one === null)) return null
  const land = within as number[]
  const seen = (values: (number | null)[]) => Math.max(floor, ...values.map((one) => one ?? 0))
  return {
    outerRatio: Math.min(land[5] as number, land[6] as number) / seen(outside),
    innerRatio: Math.min(land[0] as number, land[1] as number) / seen(inside),
    evenness: Math.min(...land) / Math.max(floor, ...land),
    swing: land[3] as number,
  }
}
