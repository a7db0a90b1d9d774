import { requireRange } from '../check/require-range.ts'
import type { Ellipse } from './ellipse.ts'
import { type LightChannel, lightAt } from './light-at.ts'
import { ringMap } from './ring-map.ts'

/** Light over the land: points of the unit disc, y up, in rows from left to right. */
export interface RingSamples {
  readonly xs: Float64Array
  readonly ys: Float64Array
  readonly values: Float64Array
  /** 1 where the value can be used: inside the picture and not clipped. */
  readonly isUsable: Uint8Array
  /** Distance between neighbouring points, in units of the outer radius. */
  readonly pitch: number
}

/** Light from which a camera is taken to be at its end. */
const clipped = 0.97

/**
 * Averages the light of a picture over the cells of a square grid on the land.
 *
 * @param channel linear light
 * @param outer outer edge in the picture
 * @param options from, to: radii, in units of the outer one; wanted: about how many cells, so that
 *   a broad land gets larger cells
 * @returns the cells whose middles lie between the radii
 * @throws RangeError when the radii are not 0 or more, and rising
 * Source: area averages on a grid, common practice, no source.
 * @example sampleRing({ light: new Float32Array(9), width: 3, height: 3 },
 *   { cx: 1, cy: 1, rx: 1, ry: 1, rotationDeg: 0 }, { from: 0.2, to: 1, wanted: 4 }).xs.length
 *   // 4
 */
export function sampleRing(
  channel: LightChannel,
  outer: Ellipse,
  options: { readonly from: number; readonly to: number; readonly wanted: number },
): RingSamples {
  const { from, to, wanted } = options
  requireRange('sampleRing', 'from', from, { from: 0, to: 2 })
  requireRange('sampleRing', 'to', to, { from, to: 2 })
  const pitch = Math.sqrt((Math.PI * (to * to - from * from)) / wanted)
  const map = ringMap(outer)
  const radius = Math.sqrt(outer.rx * outer.ry)
  const parts = Math.min(6, Math.max(1, Math.ceil(pitch * radius)))
  const half = Math.ceil(to / pitch)
  const xs: number[] = []
  const ys: number[] = []
  const values: number[] = []
  const usable: number[] = []
  for (let j = half; j >= -half; j--) {
    for (let i = -half; i <= half; i++) {
      const x = (i + 0.5) * pitch
      const y = (j + 0.5) * pitch
      const r = Math.hypot(x, y)
      if (r < from || r > to) continue
      let sum = 0
      let isInside = true
      for (let b = 0; b < parts; b++) {
        for (let a = 0; a < parts; a++) {
          const u = x + ((a + 0.5) / parts - 0.5) * pitch
          const v = y + ((b + 0.5) / parts - 0.5) * pitch
          const px = map.cx + map.xx * u + map.xy * v
          const py = map.cy - (map.xy * u + map.yy * v)
          if (px < 0 || py < 0 || px > channel.width - 1 || py > channel.height - 1) {
            isInside = false
          }
          sum += lightAt(channel, px, py)
        }
      }
      const value = sum / (parts * parts)
      xs.push(x)
      ys.push(y)
      values.push(value)
      usable.push(isInside && value < clipped ? 1 : 0)
    }
  }
  return {
    xs: Float64Array.from(xs),
    ys: Float64Array.from(ys),
    values: Float64Array.from(values),
    isUsable: Uint8Array.from(usable),
    pitch,
  }
}
