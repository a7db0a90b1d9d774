import type { Ellipse } from './ellipse.ts'
import { type LightChannel, lightAt } from './light-at.ts'
import { ringMap } from './ring-map.ts'

const angleCount = 72
/** Radii around the edge, in steps of a hundredth of it. */
const from = 0.75
const stepCount = 50
const step = 0.01
/** Slopes are taken over so many steps, and each value is the mean of five places side by side. */
const across = 2
const besideDeg = [-1, -0.5, 0, 0.5, 1]

/**
 * Gives how wide the outer edge of a face is drawn in the picture: how far the light needs from its
 * lowest to its highest along a radius where it changes fastest.
 *
 * width = (highest - lowest) / steepest slope, the middle one of 72 radii
 *
 * @param channel linear light
 * @param outer outer edge
 * @returns in units of the outer radius; about 0.03 for a sharp edge, twice and a half the standard
 *   deviation of the blur for one that is out of focus
 * Source: own method; for a step under a Gaussian blur the width is sqrt(2 pi) standard deviations.
 * @example edgeWidth({ light: new Float32Array(9), width: 3, height: 3 },
 *   { cx: 1, cy: 1, rx: 1, ry: 1, rotationDeg: 0 }) // 0
 */
export function edgeWidth(channel: LightChannel, outer: Ellipse): number {
  const map = ringMap(outer)
  const lightOn = (angle: number, r: number) => {
    const [x, y] = [r * Math.cos(angle), r * Math.sin(angle)]
    const px = map.cx + map.xx * x + map.xy * y
    const py = map.cy - (map.xy * x + map.yy * y)
    const isInside = px >= 0 && py >= 0 && px <= channel.width - 1 && py <= channel.height - 1
    return isInside ? lightAt(channel, px, py) : Number.NaN
  }
  const widths: number[] = []
  for (let i = 0; i < angleCount; i++) {
    const values: number[] = []
    for (let k = 0; k <= stepCount; k++) {
      const sum = besideDeg.reduce((total, besides) => {
        const angle = ((i * (360 / angleCount) + besides) * Math.PI) / 180
        return total + lightOn(angle, from + k * step)
      }, 0)
      if (!Number.isNaN(sum)) values.push(sum / besideDeg.length)
    }
    const slopes = values.slice(across).map((value, k) => Math.abs(value - (values[k] as number)))
    const steepest = Math.max(0, ...slopes) / (across * step)
    if (steepest > 0) widths.push((Math.max(...values) - Math.min(...values)) / steepest)
  }
  return widths.sort((a, b) => a - b)[Math.floor(widths.length / 2)] ?? 0
}
