import type { FlatnessForm } from './flatness-pattern.ts'
import { mapLobes } from './map-lobes.ts'
import { peakAndValley } from './peak-and-valley.ts'
import type { PolarMap } from './polar-map.ts'

/** A part is the form where it carries this share of the height; two parts share it from here. */
const share = 0.5
const sharedFrom = 0.3

/**
 * Names the form of a surface by the part that carries most of its height.
 *
 * across: the profile of the means around; lobes: the wave of two crests, 2 x its amplitude;
 * - flat: less high than the threshold
 * - cylinder: both carry 0.3 of the height and more
 * - convex, concave: across carries half of it, and rises from edge to edge; which edge is the
 *   higher one tells (the inner one: convex)
 * - edge: across carries half of it, but rises and falls again, as a crown does
 * - saddle: lobes carry half of it
 * - twisted: neither does, as with three waves around
 *
 * @param map without its plane
 * @param threshold below which it is flat, such as its expanded uncertainty; 0 or more
 * @returns the form; for a map of unknown sign convex and concave are exchanged, no other
 * @throws RangeError as its parts do
 * Validity: a name to go by, the map says more.
 * Source: shares chosen by us; common practice, no source.
 * @example formOfMap({ radii: [1, 2], anglesDeg: [0, 60, 120, 180, 240, 300],
 *   heights: [Array(6).fill(1), Array(6).fill(0)] }, 0.1) // convex
 */
export function formOfMap(map: PolarMap, threshold: number): FlatnessForm {
  const { peakToValley } = peakAndValley(map)
  if (peakToValley <= threshold) return 'flat'
  const means = map.heights.map((row) => row.reduce((a, b) => a + b, 0) / row.length)
  const across = Math.max(...means) - Math.min(...means)
  const lobes = 2 * (mapLobes(map, [2])[0]?.amplitude ?? 0)
  if (Math.min(across, lobes) > sharedFrom * peakToValley) return 'cylinder'
  if (lobes > share * peakToValley) return 'saddle'
  if (!(across > share * peakToValley)) return 'twisted'
  const rise = (means.at(-1) as number) - (means[0] as number)
  if (Math.abs(rise) < share * across) return 'edge'
  return rise > 0 ? 'concave' : 'convex'
}
