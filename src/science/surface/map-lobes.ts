import { requireWhole } from '../check/require-whole.ts'
import { areaWeights } from './area-weights.ts'
import type { PolarMap } from './polar-map.ts'

/** One wave around the ring. */
export interface Lobe {
  /** Crests around the ring. */
  readonly order: number
  /** Half the height from trough to crest, in the unit of the map. */
  readonly amplitude: number
  /** Where the first crest stands, counter-clockwise from the right, from 0 to below 360 / order. */
  readonly phaseDeg: number
}

/**
 * Gives the waves around a ring: the harmonics of its profile around, averaged across the land.
 *
 * profile(angle) = area-weighted mean over the radius;
 * amplitude cos(order (angle - phase)) is its harmonic
 *
 * @param map without its plane
 * @param orders whole, from 1 to less than half the count of rays
 * @returns one wave an order, in the order asked
 * @throws RangeError outside these ranges
 * Validity: a wave whose sides cancel across the land (high outside where low inside) is not seen.
 * Source: Fourier series; common practice, no source.
 * @example mapLobes({ radii: [1, 2], anglesDeg: [0, 60, 120, 180, 240, 300],
 *   heights: [[0, 3, 0, 0, 3, 0], [0, 3, 0, 0, 3, 0]] }, [2])[0].phaseDeg // 60.000
 */
export function mapLobes(map: PolarMap, orders: readonly number[]): Lobe[] {
  const { radii, anglesDeg, heights } = map
  const weights = areaWeights(radii)
  const profile = anglesDeg.map((_, j) =>
    heights.reduce((sum, row, i) => sum + (weights[i] as number) * (row[j] as number), 0),
  )
  const most = Math.ceil(anglesDeg.length / 2) - 1
  return orders.map((order) => {
    requireWhole('mapLobes', 'order', order, { from: 1, to: most })
    let [cosine, sine] = [0, 0]
    profile.forEach((height, j) => {
      const angle = ((anglesDeg[j] as number) * order * Math.PI) / 180
      cosine += (2 * height * Math.cos(angle)) / profile.length
      sine += (2 * height * Math.sin(angle)) / profile.length
    })
    const turn = 360 / order
    const phase = (Math.atan2(sine, cosine) * 180) / Math.PI / order
    const positive = (phase + turn) % turn
    return { order, amplitude: Math.hypot(cosine, sine), phaseDeg: positive }
  })
}
