import type { Ellipse } from '../ellipse.ts'
import type { LightChannel } from '../light-at.ts'
import { bandSwing } from './band-swing.ts'
import { betweenEdges } from './between-edges.ts'

const step = 0.01
const least = 0.3
const most = 0.97
const directions = 120
/** Swing below which noise and JPEG alone can look like bands. */
const floor = 0.004

const scaled = (ellipse: Ellipse, by: number): Ellipse => {
  return { ...ellipse, rx: ellipse.rx * by, ry: ellipse.ry * by }
}

/**
 * Guesses the other edge of a land from one: of the same middle and form, where the bands that
 * begin at the one end.
 *
 * @param channel linear light
 * @param edge the outer or the inner edge, pixels
 * @param side which of both it is
 * @returns the other edge and how much more light swings on the land than beyond it; null when no
 *   place is found where bands end
 * Source: own method, tried on synthetic photographs.
 * @example otherEdge({ light: new Float32Array(9), width: 3, height: 3 },
 *   { cx: 1, cy: 1, rx: 1, ry: 1, rotationDeg: 0 }, 'outer') // null
 */
export function otherEdge(
  channel: LightChannel,
  edge: Ellipse,
  side: 'outer' | 'inner',
): { readonly ellipse: Ellipse; readonly worth: number } | null {
  // Steps in the size of the outer edge, from the known edge over the land and beyond its end.
  const sign = side === 'outer' ? -1 : 1
  const reach = side === 'outer' ? 1 - least + 0.08 : 1 / least - 1
  const swings: number[] = []
  const edges = { outer: edge, inner: scaled(edge, 1e-6) }
  for (let off = 0; off < reach; off += step) {
    const swing = bandSwing(channel, betweenEdges(edges, 1 + sign * off, directions))
    if (swing === null) break
    swings.push(swing)
  }
  const before = bandSwing(channel, betweenEdges(edges, 1 - sign * 0.04, directions)) ?? 0
  let best: { by: number; worth: number } | null = null
  let lowest = Number.POSITIVE_INFINITY
  let highest = 0
  // The first steps may still lie on a chamfer.
  for (let i = 4; i + 4 < swings.length; i++) {
    lowest = Math.min(lowest, swings[i - 1] as number)
    highest = Math.max(highest, swings[i - 1] as number)
    if (lowest < 0.35 * highest) break
    if (highest < 0.01) continue
    const ratio = 1 + sign * i * step
    const inverse = side === 'outer' ? ratio : 1 / ratio
    if (inverse > most || inverse < least) continue
    const beyond = Math.max(floor, swings[i + 3] as number, swings[i + 4] as number)
    const worth = Math.min(lowest / beyond, lowest / Math.max(floor, before), 6)
    if (best === null || worth > best.worth) best = { by: ratio, worth }
  }
  return best === null ? null : { ellipse: scaled(edge, best.by), worth: best.worth }
}
