import type { LightChannel } from '../light-at.ts'

/** Slopes of brightness at every pixel, to the right and downwards. */
export interface LightSteps {
  readonly right: Float32Array
  readonly down: Float32Array
  readonly width: number
  readonly height: number
  /** The size that half of all slopes do not reach. */
  readonly usual: number
  /** The size that one slope in fifty reaches. */
  readonly steep: number
}

/** A line smoothed with weights 1 4 6 4 1, along rows or columns. */
function smoothed(
  from: Float32Array,
  size: readonly [number, number],
  along: number,
): Float32Array {
  const [width, height] = size
  const to = new Float32Array(from.length)
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = y * width + x
      const last = along === 1 ? width - 1 - x : height - 1 - y
      const before = along === 1 ? x : y
      const a = at - Math.min(2, before) * along
      const b = at - Math.min(1, before) * along
      const c = at + Math.min(1, last) * along
      const d = at + Math.min(2, last) * along
      to[at] =
        ((from[a] as number) +
          4 * (from[b] as number) +
          6 * (from[at] as number) +
          4 * (from[c] as number) +
          (from[d] as number)) /
        16
    }
  }
  return to
}

/**
 * Gives the slopes of brightness, the square root of light, a little smoothed.
 *
 * @param channel linear light
 * @returns slopes per pixel, 0 at the border of the picture
 * Source: differences after a binomial filter, common practice, no source.
 * @example lightSteps({ light: new Float32Array(9), width: 3, height: 3 }).right[4] // 0
 */
export function lightSteps(channel: LightChannel): LightSteps {
  const { width, height } = channel
  const size = [width, height] as const
  const root = channel.light.map((value) => Math.sqrt(Math.max(0, value)))
  const soft = smoothed(smoothed(root, size, 1), size, width)
  const right = new Float32Array(root.length)
  const down = new Float32Array(root.length)
  const some: number[] = []
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const at = y * width + x
      const at2 = at + width
      const at0 = at - width
      const r =
        (10 * ((soft[at + 1] as number) - (soft[at - 1] as number)) +
          3 * ((soft[at0 + 1] as number) - (soft[at0 - 1] as number)) +
          3 * ((soft[at2 + 1] as number) - (soft[at2 - 1] as number))) /
        32
      const d =
        (10 * ((soft[at2] as number) - (soft[at0] as number)) +
          3 * ((soft[at2 + 1] as number) - (soft[at0 + 1] as number)) +
          3 * ((soft[at2 - 1] as number) - (soft[at0 - 1] as number))) /
        32
      right[at] = r
      down[at] = d
      if (at % 13 === 0) some.push(Math.hypot(r, d))
    }
  }
  some.sort((a, b) => a - b)
  const reached = (share: number) => some[Math.floor(share * some.length)] ?? 0
  return { right, down, width, height, usual: reached(0.5), steep: reached(0.98) }
}
