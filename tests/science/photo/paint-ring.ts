import type { Ellipse } from '../../../src/science/photo/ellipse.ts'
import type { Picture } from '../../../src/science/photo/linear-channels.ts'

/** What is painted: a land with bands, dark around it and in its bore. */
export interface PaintedRing {
  readonly width: number
  readonly height: number
  readonly outer: Ellipse
  readonly radiusRatio: number
  /** Order of the gap at a point of the unit disc, y up, bands. */
  readonly gap: (x: number, y: number) => number
  readonly swing?: number
  /** Width of a grey chamfer at both edges, in units of the outer radius. */
  readonly chamfer?: number
}

/** Light of one place, from 0 to 1, linear. */
function lightOf(ring: PaintedRing, x: number, y: number): number {
  const r = Math.hypot(x, y)
  const { radiusRatio, chamfer = 0, swing = 0.5 } = ring
  if (r <= 1 && r >= radiusRatio) {
    return 0.4 * (1 + swing * Math.cos(2 * Math.PI * ring.gap(x, y)))
  }
  return r < 1 + chamfer && r > radiusRatio - chamfer ? 0.3 : 0.1
}

/** Paints a ring with 3 x 3 places a pixel, in yellow light, with the curve of sRGB. */
export function paintRing(ring: PaintedRing): Picture {
  const { width, height, outer } = ring
  const turn = (outer.rotationDeg * Math.PI) / 180
  const [c, s] = [Math.cos(turn), Math.sin(turn)]
  const data = new Uint8Array(3 * width * height)
  const byte = (light: number) => {
    const v = light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055
    return Math.round(255 * Math.min(1, Math.max(0, v)))
  }
  for (let py = 0; py < height; py++) {
    for (let px = 0; px < width; px++) {
      let light = 0
      for (let k = 0; k < 9; k++) {
        const dx = px + ((k % 3) - 1) / 3 - outer.cx
        const dy = -(py + (Math.floor(k / 3) - 1) / 3 - outer.cy)
        const along = (dx * c + dy * s) / outer.rx
        const across = (-dx * s + dy * c) / outer.ry
        light += lightOf(ring, along * c - across * s, along * s + across * c) / 9
      }
      const at = 3 * (py * width + px)
      data[at] = byte(light)
      data[at + 1] = byte(0.7 * light)
      data[at + 2] = byte(0.05 * light)
    }
  }
  return { data, width, height }
}

/** Places on an ellipse, as they would be set by hand. */
export function placesOn(ellipse: Ellipse, count: number, offPx = 0): [number, number][] {
  const turn = (ellipse.rotationDeg * Math.PI) / 180
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * (i + 0.3)) / count
    // Off by turns inwards and outwards, as a hand is.
    const off = offPx * Math.sin(7 * i)
    const u = (ellipse.rx + off) * Math.cos(angle)
    const v = (ellipse.ry + off) * Math.sin(angle)
    const x = u * Math.cos(turn) - v * Math.sin(turn)
    const y = u * Math.sin(turn) + v * Math.cos(turn)
    return [ellipse.cx + x, ellipse.cy - y]
  })
}
