import { requireWhole } from '../../check/require-whole.ts'
import type { LightChannel } from '../light-at.ts'
import type { Picture } from '../linear-channels.ts'

/** The curve of sRGB undone, a value a byte (IEC 61966-2-1, from memory). */
const linearOfByte = Float32Array.from({ length: 256 }, (_, byte) => {
  const v = byte / 255
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4
})

/** A channel of a smaller picture, and pixels of it for one of the picture. */
export interface ShrunkChannel extends LightChannel {
  readonly scale: number
}

/** For each pixel of a line the place it falls on in a shorter line, and the share that does. */
function placesOf(length: number, shorter: number) {
  const first = new Int32Array(length)
  const share = new Float32Array(length)
  for (let i = 0; i < length; i++) {
    const from = (i * shorter) / length
    const to = ((i + 1) * shorter) / length
    const place = Math.min(shorter - 1, Math.floor(from + 1e-9))
    first[i] = place
    share[i] = to <= place + 1 ? 1 : (place + 1 - from) / (to - from)
  }
  return { first, share }
}

/** One channel in linear light, averaged over the area of each pixel of the smaller picture. */
function averaged(picture: Picture, channel: number, width: number, height: number): Float32Array {
  const across = placesOf(picture.width, width)
  const down = placesOf(picture.height, height)
  const sums = new Float32Array((width + 1) * (height + 1))
  const line = new Float32Array(width + 1)
  for (let y = 0; y < picture.height; y++) {
    line.fill(0)
    let at = 3 * y * picture.width + channel
    for (let x = 0; x < picture.width; x++, at += 3) {
      const light = linearOfByte[picture.data[at] as number] as number
      const place = across.first[x] as number
      const part = light * (across.share[x] as number)
      line[place] = (line[place] as number) + part
      line[place + 1] = (line[place + 1] as number) + light - part
    }
    const row = (down.first[y] as number) * (width + 1)
    const share = down.share[y] as number
    for (let x = 0; x < width; x++) {
      const light = line[x] as number
      sums[row + x] = (sums[row + x] as number) + light * share
      const next = row + width + 1 + x
      sums[next] = (sums[next] as number) + light * (1 - share)
    }
  }
  const area = (width * height) / (picture.width * picture.height)
  const light = new Float32Array(width * height)
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) light[y * width + x] = area * (sums[y * (width + 1) + x] ?? 0)
  }
  return light
}

/** How far light differs over a channel, less where it is at the end of the camera's range. */
function worth(picture: Picture, channel: number): number {
  const count = picture.width * picture.height
  // An odd step, so that columns of the picture are taken in turn.
  const step = Math.max(1, Math.floor(count / 20_000)) | 1
  const some = new Float32Array(Math.ceil(count / step))
  for (let i = 0; i < some.length; i++) {
    some[i] = linearOfByte[picture.data[3 * i * step + channel] as number] as number
  }
  some.sort()
  const exceeded = (share: number) => some[Math.floor((1 - share) * (some.length - 1))] as number
  const clipped = some.filter((value) => value > 0.97).length / some.length
  return (exceeded(0.05) - exceeded(0.95)) * (1 - clipped)
}

/**
 * Makes a picture smaller and keeps the channel in which its light differs most.
 *
 * @param picture upright, three bytes a pixel
 * @param longest pixels of the longer side at most, from 16; a smaller picture keeps its size
 * @returns linear light from 0 to 1, and the scale
 * @throws RangeError when the length is not that of the size
 * Source: area averages, common practice, no source.
 * @example shrinkPicture({ data: new Uint8Array(12).fill(255), width: 2, height: 2 }, 16).light[3]
 *   // 1
 */
export function shrinkPicture(picture: Picture, longest: number): ShrunkChannel {
  const count = 3 * picture.width * picture.height
  requireWhole('shrinkPicture', 'longest', longest, { from: 16, to: 10_000 })
  requireWhole('shrinkPicture', 'data length', picture.data.length, { from: count, to: count })
  const scale = Math.min(1, longest / Math.max(picture.width, picture.height))
  const width = Math.max(1, Math.round(picture.width * scale))
  const height = Math.max(1, Math.round(picture.height * scale))
  const worths = [0, 1, 2].map((channel) => worth(picture, channel))
  const light = averaged(picture, worths.indexOf(Math.max(...worths)), width, height)
  return { light, width, height, scale }
}
