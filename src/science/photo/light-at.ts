/** One channel of a picture, in linear light. */
export interface LightChannel {
  readonly light: Float32Array
  readonly width: number
  readonly height: number
}

/**
 * Gives the light between pixels, by the four around the place.
 *
 * @param channel rows from the top
 * @param x,y pixels from the left and the top, whole numbers at the middles of pixels; places off
 *   the picture take the light of its border
 * @returns light, as the channel has it
 * Source: bilinear interpolation, common practice, no source.
 * @example lightAt({ light: new Float32Array([0, 1, 2, 3]), width: 2, height: 2 }, 0.5, 1) // 2.5
 */
export function lightAt(channel: LightChannel, x: number, y: number): number {
  const { light, width, height } = channel
  const cx = Math.min(Math.max(x, 0), width - 1)
  const cy = Math.min(Math.max(y, 0), height - 1)
  const left = Math.floor(cx)
  const top = Math.floor(cy)
  const right = left + 1 < width ? left + 1 : left
  const fx = cx - left
  const fy = cy - top
  const upper = top * width
  const lower = (top + 1 < height ? top + 1 : top) * width
  const above = (light[upper + left] as number) * (1 - fx) + (light[upper + right] as number) * fx
  const below = (light[lower + left] as number) * (1 - fx) + (light[lower + right] as number) * fx
  return above * (1 - fy) + below * fy
}
