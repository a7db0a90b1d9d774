import { type FlatnessPattern, flatnessPatterns } from '../science/surface/flatness-pattern.ts'

/** The patterns a technician can pick under the lamp: one list for picture and figure. */
export const bandPatterns = flatnessPatterns
export type BandPattern = FlatnessPattern

interface Setup {
  /** Opening of the air wedge over one radius, in bands; 0 = the flat rests on the face. */
  readonly wedgeBands: number
  /** Height of the face at x, y (units of the outer radius, y up), in bands, material high = +. */
  readonly heightBands: (x: number, y: number) => number
}

const setups: Readonly<Record<Exclude<BandPattern, 'unreadable'>, Setup>> = {
  straight: { wedgeBands: 3.25, heightBands: () => 0 },
  convex: { wedgeBands: 3.6, heightBands: (x, y) => -1.05 * (x * x + y * y) },
  concave: { wedgeBands: 3.6, heightBands: (x, y) => 1.05 * (x * x + y * y) },
  // Resting on the ridge, without a wedge: straight bands, wide in the middle, crowding outwards.
  cylinder: { wedgeBands: 0, heightBands: (x) => -3.6 * x * x },
  // Almost without a wedge: two high and two low quarters.
  saddle: { wedgeBands: 0.4, heightBands: (x, y) => 3 * (y * y - x * x) },
  rings: { wedgeBands: 0, heightBands: (x, y) => -3.2 * x * x - 2.7 * y * y },
  's-shape': { wedgeBands: 3.25, heightBands: (x) => 2.1 * (1.7 * x ** 3 - 1.15 * x) },
  'turned-edge': {
    wedgeBands: 3.9,
    heightBands: (x, y) => -0.85 * Math.max(0, (Math.hypot(x, y) - 0.68) / 0.32) ** 2,
  },
  local: {
    wedgeBands: 3.25,
    heightBands: (x, y) => -0.95 * Math.exp(-((x - 0.52) ** 2 + (y - 0.42) ** 2) / 0.036),
  },
}

/**
 * The air gap between optical flat and face for a model face with the given pattern, counted in
 * light bands: W = t·y − h(x, y), gap = wedge − height. The line of contact lies at the bottom of
 * the picture and the wedge opens upwards, so bands of a convex face bulge upwards (away from
 * contact) and bands of a concave face bulge downwards (towards it). A whole number of bands is
 * dark, since one of the two reflections turns the wave by half.
 *
 * @param pattern any pattern with bands: all but `unreadable`
 * @param x across, in outer radii, −1 to 1
 * @param y upwards, in outer radii, −1 to 1
 * @returns gap above the height of the contact line's level, in bands (may be negative: only
 *   differences are seen)
 * @throws RangeError for `unreadable`, which has no bands
 * Source: wedge method of reading an optical flat (geometry, computed here).
 * @example gapBands('convex', 0, 0.5) // 2.0625
 */
export function gapBands(pattern: BandPattern, x: number, y: number): number {
  if (pattern === 'unreadable') {
    throw new RangeError('gapBands requires pattern from straight to local, got unreadable')
  }
  const { wedgeBands, heightBands } = setups[pattern]
  return wedgeBands * y - heightBands(x, y)
}

/**
 * The parts of the gap of a model face: how far the wedge opens over one radius, and the face.
 *
 * @param pattern any pattern with bands: all but `unreadable`
 * @returns wedgeBands, in bands over an outer radius upwards; heightBands of x and y, as gapBands
 * Source: as gapBands.
 * @example modelFace('convex').heightBands(1, 0) // -1.05
 */
export function modelFace(pattern: Exclude<BandPattern, 'unreadable'>): {
  readonly wedgeBands: number
  readonly heightBands: (x: number, y: number) => number
} {
  return setups[pattern]
}
