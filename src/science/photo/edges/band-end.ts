import type { Ellipse } from '../ellipse.ts'
import type { LightChannel } from '../light-at.ts'
import { bandSwing } from './band-swing.ts'
import { betweenEdges } from './between-edges.ts'

const step = 0.002
const landwards = 0.05
const outwards = 0.03
const directions = 360

const middle = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] as number

/**
 * Finds where bands end near a curve of about the right middle and form, as a chamfer's far border
 * is: where the light around swings half as much as on the land.
 *
 * @param channel linear light
 * @param ellipse the curve, pixels
 * @param side outer edge (the land lies inside) or inner edge
 * @returns how far beyond the curve, seen from the land, in units of its radius, from -0.05 to 0.03;
 *   null where the swing falls to no less than half, or bands lie off the picture
 * Source: own method, tried on synthetic photographs.
 * @example bandEnd({ light: new Float32Array(9), width: 3, height: 3 },
 *   { cx: 1, cy: 1, rx: 1, ry: 1, rotationDeg: 0 }, 'outer') // null
 */
export function bandEnd(
  channel: LightChannel,
  ellipse: Ellipse,
  side: 'outer' | 'inner',
): number | null {
  const sign = side === 'outer' ? 1 : -1
  const edges = { outer: ellipse, inner: { ...ellipse, rx: 1e-6, ry: 1e-6 } }
  const swings: number[] = []
  for (let off = -landwards; off <= outwards + 1e-9; off += step) {
    const swing = bandSwing(channel, betweenEdges(edges, 1 + sign * off, directions))
    if (swing === null) return null
    swings.push(swing)
  }
  const land = middle(swings.slice(0, 8))
  const beyond = middle(swings.slice(-8))
  if (!(land > 0.01 && beyond < 0.5 * land)) return null
  const half = (land + beyond) / 2
  const at = swings.findIndex((swing, i) => i > 0 && swing < half)
  const before = swings[at - 1] as number
  const after = swings[at] as number
  return -landwards + step * (at - 1 + (before - half) / (before - after))
}
