import type { Ellipse } from './ellipse.ts'
import type { LightChannel } from './light-at.ts'
import type { LinearChannels } from './linear-channels.ts'
import { sampleRing } from './sample-ring.ts'

/** The channel in which the bands of a land show best. */
export interface ChosenChannel {
  readonly channel: LightChannel
  /** 0 red, 1 green, 2 blue. */
  readonly index: number
  /** Share of the land at the end of the camera's range. */
  readonly clippedShare: number
}

/**
 * Chooses the channel in which the light over the land differs most without being clipped.
 *
 * worth = (light exceeded by 10 % - light exceeded by 90 %) (1 - 3 clipped share)
 *
 * @param picture its channels in linear light
 * @param face outer: outer edge; radiusRatio: inner over outer radius
 * @returns the best channel
 * Source: chosen on synthetic photographs.
 * @example chooseChannel({ width: 3, height: 3, channels: [new Float32Array(9),
 *   new Float32Array([0, 1, 0, 0, 0, 0, 0, 0, 0]), new Float32Array(9)] },
 *   { outer: { cx: 1, cy: 1, rx: 1, ry: 1, rotationDeg: 0 }, radiusRatio: 0.5 }).index // 1
 */
export function chooseChannel(
  picture: LinearChannels,
  face: { readonly outer: Ellipse; readonly radiusRatio: number },
): ChosenChannel {
  const { width, height, channels } = picture
  const margin = 0.15 * (1 - face.radiusRatio)
  let best: (ChosenChannel & { readonly worth: number }) | null = null
  channels.forEach((light, index) => {
    const channel = { light, width, height }
    const samples = sampleRing(channel, face.outer, {
      from: face.radiusRatio + margin,
      to: 1 - margin,
      wanted: 3000,
    })
    const sorted = samples.values.slice().sort()
    const clipped = sorted.filter((value) => value >= 0.97).length / sorted.length
    const exceeded = (share: number) => sorted[Math.floor((1 - share) * sorted.length)] as number
    const worth = (exceeded(0.1) - exceeded(0.9)) * (1 - 3 * clipped)
    if (best === null || worth > best.worth) best = { channel, index, clippedShare: clipped, worth }
  })
  return best as unknown as ChosenChannel
}
