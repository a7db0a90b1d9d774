import { requireWhole } from '../../check/require-whole.ts'
import type { LightChannel } from '../light-at.ts'

/**
 * Makes a channel smaller by a whole factor: means of squares; what is left over at the right and
 * at the bottom is cut off.
 *
 * @param channel linear light
 * @param by pixels that become one along each side, from 1 to the shorter side
 * @returns the smaller channel
 * @throws RangeError when the factor is not whole or too large
 * Source: area averages, common practice, no source.
 * @example shrinkChannel({ light: new Float32Array([0, 1, 2, 3]), width: 2, height: 2 }, 2).light[0]
 *   // 1.5
 */
export function shrinkChannel(channel: LightChannel, by: number): LightChannel {
  const { light } = channel
  const shorter = Math.min(channel.width, channel.height)
  requireWhole('shrinkChannel', 'by', by, { from: 1, to: Math.max(1, shorter) })
  const width = Math.floor(channel.width / by)
  const height = Math.floor(channel.height / by)
  const means = new Float32Array(width * height)
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let sum = 0
      for (let b = 0; b < by; b++) {
        const from = (y * by + b) * channel.width + x * by
        for (let a = 0; a < by; a++) sum += light[from + a] as number
      }
      means[y * width + x] = sum / (by * by)
    }
  }
  return { light: means, width, height }
}
