import type { Ellipse } from './ellipse.ts'
import { type LightChannel, lightAt } from './light-at.ts'
import { ringMap } from './ring-map.ts'

/** Light along 240 directions across an edge, each row from the land outwards. */
export interface EdgeProfiles {
  readonly angleCount: number
  readonly offsetCount: number
  /** Offset of the first place and from place to place, in units of the radius, land negative. */
  readonly first: number
  readonly step: number
  /** One row a direction. */
  readonly light: Float64Array
}

const angleCount = 240
/** Rays averaged for one direction, spread evenly up to the next direction. */
const raysTogether = 5

/**
 * Reads the light across an edge, about half a pixel apart.
 *
 * @param channel linear light
 * @param ellipse where the edge is expected
 * @param options side: outer edge (the land lies inside) or inner edge (the land lies outside);
 *   landwards, outwards: how far to read on both sides, in units of the radius
 * @returns light in rows, a row a direction
 * Source: common practice, no source.
 * @example edgeProfiles({ light: new Float32Array(9), width: 3, height: 3 },
 *   { cx: 1, cy: 1, rx: 1, ry: 1, rotationDeg: 0 },
 *   { side: 'outer', landwards: 0.5, outwards: 0.5 }).offsetCount // 3
 */
export function edgeProfiles(
  channel: LightChannel,
  ellipse: Ellipse,
  options: {
    readonly side: 'outer' | 'inner'
    readonly landwards: number
    readonly outwards: number
  },
): EdgeProfiles {
  const radius = Math.sqrt(ellipse.rx * ellipse.ry)
  const sign = options.side === 'outer' ? 1 : -1
  const step = 1 / (2 * radius)
  const before = Math.ceil(options.landwards / step)
  const offsetCount = before + Math.ceil(options.outwards / step) + 1
  const map = ringMap(ellipse)
  const light = new Float64Array(angleCount * offsetCount)
  for (let ray = 0; ray < angleCount * raysTogether; ray++) {
    const row = Math.floor(ray / raysTogether) * offsetCount
    const angle = (2 * Math.PI * (ray - (raysTogether - 1) / 2)) / (angleCount * raysTogether)
    const c = Math.cos(angle)
    const s = Math.sin(angle)
    for (let i = 0; i < offsetCount; i++) {
      const r = 1 + sign * (i - before) * step
      const px = map.cx + (map.xx * c + map.xy * s) * r
      const py = map.cy - (map.xy * c + map.yy * s) * r
      light[row + i] = (light[row + i] as number) + lightAt(channel, px, py) / raysTogether
    }
  }
  return { angleCount, offsetCount, first: -before * step, step, light }
}
