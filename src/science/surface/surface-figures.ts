import { type Lobe, mapLobes } from './map-lobes.ts'
import { mapPoints } from './map-points.ts'
import { mapRms } from './map-rms.ts'
import { minimumZone } from './minimum-zone.ts'
import { type MapPlace, peakAndValley } from './peak-and-valley.ts'
import type { PolarMap } from './polar-map.ts'
import { radialTaper } from './radial-taper.ts'
import { withoutPlane } from './without-plane.ts'

/** What is said of a whole surface, in the unit of its heights. */
export interface SurfaceFigures {
  /** Peak to valley after the area-weighted least-squares plane. */
  readonly peakToValley: number
  readonly minimumZone: number
  readonly rms: number
  /** Outer edge minus inner edge; see radialTaper. */
  readonly taper: number
  /** Two and three waves around. */
  readonly lobes: readonly Lobe[]
  /** Four to six waves around, for information. */
  readonly furtherLobes: readonly Lobe[]
  readonly peak: MapPlace
  readonly valley: MapPlace
  /** The map without its plane, to which all of these belong. */
  readonly map: PolarMap
}

/**
 * Gives the figures of a surface over a ring.
 *
 * @param map heights with or without tilt; 16 rays or more
 * @returns the figures in the unit of the heights; minimumZone <= peakToValley
 * @throws RangeError as its parts do
 * Validity: of the places of the grid; 17 circles and 180 rays are enough for six waves around.
 * Source: least-squares and minimum-zone flatness and RMS, ISO 12781 (from memory).
 * @example surfaceFigures({ radii: [1, 2], anglesDeg: [...Array(16).keys()].map((j) => 22.5 * j),
 *   heights: [Array(16).fill(0), Array(16).fill(3)] }).taper // 3.0000
 */
export function surfaceFigures(map: PolarMap): SurfaceFigures {
  const flat = withoutPlane(map).map
  const { peak, valley, peakToValley } = peakAndValley(flat)
  return {
    peakToValley,
    minimumZone: Math.min(peakToValley, minimumZone(mapPoints(flat)).height),
    rms: mapRms(flat),
    taper: radialTaper(flat),
    lobes: mapLobes(flat, [2, 3]),
    furtherLobes: mapLobes(flat, [4, 5, 6]),
    peak,
    valley,
    map: flat,
  }
}
