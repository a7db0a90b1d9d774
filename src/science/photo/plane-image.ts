import type { RingSamples } from './sample-ring.ts'

/** The relative light of the land on a square grid, 0 elsewhere, y up. */
export interface PlaneImage {
  readonly size: number
  /** Width of a cell, in units of the outer radius. */
  readonly pitch: number
  readonly values: Float64Array
}

/** The square reaches from -1.4 to 1.4, so that the transform resolves well. */
const reach = 1.4

/**
 * Puts samples of the land into the cells of a square grid from -1.4 to 1.4.
 *
 * @param samples where the light was read
 * @param relative their relative light
 * @param size cells along a side
 * @returns means by cell, row by row from the bottom
 * Source: common practice, no source.
 * @example planeImage({ xs: new Float64Array([0.5]), ys: new Float64Array([0.5]), pitch: 0.1,
 *   values: new Float64Array(1), isUsable: new Uint8Array([1]) }, new Float64Array([0.3]), 4)
 *   .values[10] // 0.3
 */
export function planeImage(samples: RingSamples, relative: Float64Array, size: number): PlaneImage {
  const pitch = (2 * reach) / size
  const values = new Float64Array(size * size)
  const counts = new Float64Array(size * size)
  for (let i = 0; i < samples.xs.length; i++) {
    if (samples.isUsable[i] === 0) continue
    const column = Math.floor(((samples.xs[i] as number) + reach) / pitch)
    const row = Math.floor(((samples.ys[i] as number) + reach) / pitch)
    const at = row * size + column
    values[at] = (values[at] as number) + (relative[i] as number)
    counts[at] = (counts[at] as number) + 1
  }
  for (let at = 0; at < values.length; at++) {
    const count = counts[at] as number
    if (count > 0) values[at] = (values[at] as number) / count
  }
  return { size, pitch, values }
}
