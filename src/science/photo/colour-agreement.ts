import type { Ellipse } from './ellipse.ts'
import type { LinearChannels } from './linear-channels.ts'
import { relativeLight } from './relative-light.ts'
import { sampleRing } from './sample-ring.ts'

/** A darker channel holds noise and stray light more than bands. */
const leastMeanShare = 0.25
/** Bands that hardly swing in a channel are washed out by other light, not elsewhere. */
const leastSwingShare = 0.5
const sampleCount = 3000

interface Channel {
  readonly mean: number
  readonly swing: number
  readonly relative: Float64Array
}

function correlation(a: Float64Array, b: Float64Array): number {
  let [products, squaresA, squaresB] = [0, 0, 0]
  for (let i = 0; i < a.length; i++) {
    const [x, y] = [a[i] as number, b[i] as number]
    products += x * y
    squaresA += x * x
    squaresB += y * y
  }
  return products / Math.sqrt(squaresA * squaresB)
}

/**
 * Says how well the colours of a picture agree on where the bands are. Under a lamp of one colour
 * every channel shows the same bands; under a white lamp, or several lines of comparable strength,
 * red, green and blue show bands of their own.
 *
 * agreement = least correlation of the relative light of the chosen channel with that of another,
 * of those that are a quarter as bright or more and swing half as much or more
 *
 * @param picture its channels in linear light
 * @param chosen index of the channel that is read
 * @param face outer: outer edge; from, to: radii of the land that is used, outer radius 1
 * @returns from -1 to 1; 1 where no other channel is bright enough to say anything
 * @throws RangeError as sampleRing
 * Source: own method; its limits were chosen on synthetic photographs.
 * @example colourAgreement({ width: 3, height: 3, channels: [new Float32Array(9),
 *   new Float32Array(9), new Float32Array(9)] }, 1, { outer: { cx: 1, cy: 1, rx: 1, ry: 1,
 *   rotationDeg: 0 }, from: 0.5, to: 1 }) // 1
 */
export function colourAgreement(
  picture: LinearChannels,
  chosen: number,
  face: { readonly outer: Ellipse; readonly from: number; readonly to: number },
): number {
  const { width, height } = picture
  const channels = picture.channels.map((light): Channel => {
    const range = { from: face.from, to: face.to, wanted: sampleCount }
    const samples = sampleRing({ light, width, height }, face.outer, range)
    const relative = relativeLight(samples)
    const sorted = relative.slice().sort()
    const exceeded = (share: number) => sorted[Math.floor((1 - share) * sorted.length)] ?? 0
    const mean = samples.values.reduce((a, b) => a + b, 0) / Math.max(1, samples.values.length)
    return { mean, swing: exceeded(0.1) - exceeded(0.9), relative }
  })
  const own = channels[chosen] as Channel
  return channels.reduce((least, one, index) => {
    const isAsked =
      index !== chosen &&
      one.mean > leastMeanShare * own.mean &&
      one.swing > leastSwingShare * own.swing
    return isAsked ? Math.min(least, correlation(own.relative, one.relative)) : least
  }, 1)
}
