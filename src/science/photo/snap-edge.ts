import { leastSquares } from '../statistics/least-squares.ts'
import { type EdgeProfiles, edgeProfiles } from './edge-profiles.ts'
import { type EdgeWave, edgeWave } from './edge-wave.ts'
import type { Ellipse } from './ellipse.ts'
import { fitEllipse } from './fit-ellipse.ts'
import type { LightChannel } from './light-at.ts'
import { ringMap } from './ring-map.ts'
import { seekEdge } from './seek-edge.ts'

/** An edge that was followed in the picture, or left where it was. */
export interface SnappedEdge {
  readonly ellipse: Ellipse
  readonly isSnapped: boolean
  /** Robust spread of the steps in light about the edge, in units of the radius. */
  readonly scatter: number
  /** The share of directions in which a step was seen on the edge. */
  readonly share: number
  /** The largest departure from where it was expected, in units of the radius. */
  readonly moved: number
}

/** How far a step in light may lie from the sought curve and still be taken for the edge. */
const window = 0.005

interface Step {
  readonly angle: number
  readonly offset: number
  readonly steepness: number
}

/** The steepest change of light near the curve in each direction, to a part of a pixel. */
function stepsNear(profiles: EdgeProfiles, wave: EdgeWave): Step[] {
  const { angleCount, offsetCount, first, step, light } = profiles
  const found: Step[] = []
  for (let j = 0; j < angleCount; j++) {
    const angle = (2 * Math.PI * j) / angleCount
    const expected = (edgeWave(wave, angle) - first) / step
    const reach = Math.max(3, window / step)
    const row = j * offsetCount
    const slope = (i: number) =>
      Math.abs(
        2 * ((light[row + i + 1] as number) - (light[row + i - 1] as number)) +
          ((light[row + i + 2] as number) - (light[row + i - 2] as number)) +
          ((light[row + i + 3] as number) - (light[row + i - 3] as number)),
      )
    let best: Step | null = null
    const from = Math.max(4, Math.ceil(expected - reach))
    const to = Math.min(offsetCount - 5, Math.floor(expected + reach))
    for (let i = from; i <= to; i++) {
      const [before, here, after] = [slope(i - 1), slope(i), slope(i + 1)]
      if (here < before || here <= after || here <= (best?.steepness ?? 0)) continue
      const part = (0.5 * (before - after)) / (before - 2 * here + after)
      best = { angle, offset: first + (i + part) * step, steepness: here }
    }
    if (best !== null) found.push(best)
  }
  return found
}

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN

/** Least squares with weights that fall to nothing (bisquare), steep steps counting more. */
function robustWave(steps: readonly Step[], start: EdgeWave): { wave: EdgeWave; scatter: number } {
  const usual = middle(steps.map((one) => one.steepness))
  let wave = start
  let scatter = Number.POSITIVE_INFINITY
  for (let round = 0; round < 10; round++) {
    const off = steps.map((one) => one.offset - edgeWave(wave, one.angle))
    scatter = 1.4826 * middle(off.map(Math.abs))
    const width = Math.max(4 * scatter, 0.001)
    const weights = steps.map((one, i) => {
      const inside = Math.max(0, 1 - ((off[i] as number) / width) ** 2)
      return inside * Math.min(1, one.steepness / usual)
    })
    if (weights.filter((one) => one > 0).length < 40) break
    const unit = (k: number): EdgeWave =>
      [0, 1, 2, 3, 4].map((i) => (i === k ? 1 : 0)) as unknown as EdgeWave
    const columns = [0, 1, 2, 3, 4].map((k) =>
      steps.map((one, i) => (weights[i] as number) * edgeWave(unit(k), one.angle)),
    )
    const values = steps.map((one, i) => (weights[i] as number) * one.offset)
    wave = leastSquares({ columns, values }).coefficients as unknown as EdgeWave
  }
  return { wave, scatter }
}

function moveEllipse(near: Ellipse, wave: EdgeWave, side: 'outer' | 'inner'): Ellipse | null {
  const map = ringMap(near)
  const sign = side === 'outer' ? 1 : -1
  return fitEllipse(
    Array.from({ length: 120 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 120
      const r = 1 + sign * edgeWave(wave, angle)
      const x = r * Math.cos(angle)
      const y = r * Math.sin(angle)
      return [map.cx + map.xx * x + map.xy * y, map.cy - (map.xy * x + map.yy * y)] as const
    }),
  )
}

/**
 * Follows the edge of the land near an ellipse: first roughly, where the bands end, then by the
 * steps in light along 240 directions.
 *
 * @param channel linear light
 * @param near where the edge is expected, within about 2.5 % of its radius
 * @param side which edge of the land
 * @returns the edge followed, with isSnapped true; or the ellipse as it was, when the steps scatter
 *   too much, are seen in too few directions, or would move the edge too far
 * Source: gradient edges along radial profiles; the limits were chosen on synthetic photographs.
 * @example snapEdge({ light: new Float32Array(9), width: 3, height: 3 },
 *   { cx: 1, cy: 1, rx: 1, ry: 1, rotationDeg: 0 }, 'outer').isSnapped // false
 */
export function snapEdge(
  channel: LightChannel,
  near: Ellipse,
  side: 'outer' | 'inner',
): SnappedEdge {
  const profiles = edgeProfiles(channel, near, { side, landwards: 0.055, outwards: 0.035 })
  const sought = seekEdge(profiles, 0.02)
  const steps = stepsNear(profiles, sought)
  const nothing = { scatter: Number.POSITIVE_INFINITY, share: 0, moved: 0 }
  if (steps.length < 60) return { ellipse: near, isSnapped: false, ...nothing }
  const { wave, scatter } = robustWave(steps, sought)
  const seen = steps.filter((one) => {
    return Math.abs(one.offset - edgeWave(wave, one.angle)) < Math.max(2.5 * scatter, 0.0015)
  })
  const share = seen.length / profiles.angleCount
  const moved = Math.max(...steps.map((one) => Math.abs(edgeWave(wave, one.angle))))
  const ellipse = moveEllipse(near, wave, side)
  if (ellipse === null || !(scatter < 0.0025 && share >= 0.5 && moved < 0.035)) {
    return { ellipse: near, isSnapped: false, scatter, share, moved }
  }
  return { ellipse, isSnapped: true, scatter, share, moved }
}
