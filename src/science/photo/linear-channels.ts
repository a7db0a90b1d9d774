import { requireWhole } from '../check/require-whole.ts'

/** A picture: red, green, blue bytes one after another, rows from the top, upright. */
export interface Picture {
  readonly data: Uint8Array
  readonly width: number
  readonly height: number
}

/** The three channels apart, in linear light from 0 to 1. */
export interface LinearChannels {
  readonly width: number
  readonly height: number
  readonly channels: readonly [Float32Array, Float32Array, Float32Array]
}

/** The curve of sRGB undone, a value a byte. */
const linearOfByte = Float32Array.from({ length: 256 }, (_, byte) => {
  const v = byte / 255
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4
})

/**
 * Gives the channels of a picture in linear light.
 *
 * linear = v / 12.92 up to v = 0.04045, ((v + 0.055) / 1.055)^2.4 above, v = byte / 255
 *
 * @param picture width and height from 1 to 20 000; three bytes a pixel
 * @returns red, green and blue, from 0 to 1
 * @throws RangeError when the length is not that of the size
 * Validity: a camera's own tone curve is not known; the fit of the bands takes up what is left.
 * Source: IEC 61966-2-1, the curve of sRGB (from memory).
 * @example linearChannels({ data: new Uint8Array([0, 128, 255]), width: 1, height: 1 })
 *   .channels[1][0] // 0.2159
 */
export function linearChannels(picture: Picture): LinearChannels {
  const { data, width, height } = picture
  requireWhole('linearChannels', 'width', width, { from: 1, to: 20_000 })
  requireWhole('linearChannels', 'height', height, { from: 1, to: 20_000 })
  const count = width * height
  requireWhole('linearChannels', 'data length', data.length, { from: 3 * count, to: 3 * count })
  const red = new Float32Array(count)
  const green = new Float32Array(count)
  const blue = new Float32Array(count)
  for (let i = 0; i < count; i++) {
    red[i] = linearOfByte[data[3 * i] as number] as number
    green[i] = linearOfByte[data[3 * i + 1] as number] as number
    blue[i] = linearOfByte[data[3 * i + 2] as number] as number
  }
  return { width, height, channels: [red, green, blue] }
}
