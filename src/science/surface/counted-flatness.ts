import { requireRange } from '../check/require-range.ts'
import { bandHeightUm } from '../optics/band-height-um.ts'
import { umToUin } from '../units/um-to-uin.ts'
import { type FlatnessForm, type FlatnessPattern, formOfPattern } from './flatness-pattern.ts'
import { type CountedReading, readingBands } from './reading-bands.ts'

/** The flatness figure of a light-band reading by eye. */
export interface CountedFlatness {
  readonly bandHeightUm: number
  readonly bands: number
  readonly flatnessUm: number
  readonly flatnessUin: number
  readonly form: FlatnessForm
  /** What the method sees: counting along a line gauges taper and is nearly blind to lobes. */
  readonly sees: 'taper'
}

/** Gives the largest reading of each direction; 0 and 180 degrees are one direction. */
function largestByDirection(readings: readonly CountedReading[]): number[] {
  const largest = new Map<number, number>()
  for (const reading of readings) {
    const direction = ((reading.directionDeg % 180) + 180) % 180
    largest.set(direction, Math.max(largest.get(direction) ?? 0, readingBands(reading)))
  }
  return [...largest.values()].sort((a, b) => b - a)
}

function bandsOf(pattern: FlatnessPattern, readings: readonly CountedReading[]): number {
  const [first, second] = largestByDirection(readings)
  if (pattern === 'straight') return 0
  if (pattern !== 'saddle') {
    requireRange('countedFlatness', 'count of readings', readings.length, { from: 1, to: 1000 })
    return first ?? Number.NaN
  }
  if (first === undefined || second === undefined) {
    const count = first === undefined ? 0 : 1
    throw new RangeError(
      `countedFlatness requires directions of a saddle from 2 to 1000, got ${count}`,
    )
  }
  return first + second
}

/**
 * Gives the flatness figure of a light-band reading from its pattern and counts, in um.
 *
 * flatness = bands x wavelength / (2 cos viewingAngle), with bands
 * - straight: 0, whatever was entered (report it with its uncertainty, not as nothing);
 * - saddle: the sum of the two largest directions, since one bows up and the other down;
 * - s-shape: the larger direction, each entered as the sum of its two lobes already;
 * - all others: the larger direction.
 *
 * @param input pattern: any but unreadable; readings: one or more (none needed for straight, two
 *   directions for saddle; 0 and 180 degrees are one direction), see readingBands;
 *   wavelengthNm: in air, from 200 to 2000; viewingAngleDeg: from the normal, 0 to 80 (0 when
 *   absent); ringCentre: for rings, whether the press test showed a high or a low centre
 * @returns bandHeightUm, bands, flatnessUm, flatnessUin, form, and what the method sees. The form
 *   of rings is undetermined unless ringCentre is given: a ring pattern looks the same over a hill
 *   and a hollow
 * @throws RangeError outside these ranges, and for the pattern unreadable, which is no figure
 * Validity: a count along a line gauges taper; of a saddle it can miss most of the height.
 * Source: bow of a band over its spacing as contour lines of the gap; peak to valley by pattern is
 *   our own derivation.
 * @example countedFlatness({ pattern: 'convex', readings: [{ directionDeg: 0, bands: 2 }],
 *   wavelengthNm: 587.5618 }).flatnessUm // 0.5876
 */
export function countedFlatness(input: {
  readonly pattern: FlatnessPattern
  readonly readings: readonly CountedReading[]
  readonly wavelengthNm: number
  readonly viewingAngleDeg?: number | undefined
  readonly ringCentre?: 'high' | 'low' | undefined
}): CountedFlatness {
  const { pattern, readings, ringCentre } = input
  if (pattern === 'unreadable') {
    throw new RangeError('countedFlatness requires pattern readable, got unreadable')
  }
  const bandHeight = bandHeightUm(input)
  const bands = bandsOf(pattern, readings)
  const isRingSigned = pattern === 'rings' && ringCentre !== undefined
  const signedForm = ringCentre === 'high' ? 'convex' : 'concave'
  const flatnessUm = bands * bandHeight
  return {
    bandHeightUm: bandHeight,
    bands,
    flatnessUm,
    flatnessUin: umToUin(flatnessUm),
    form: isRingSigned ? signedForm : formOfPattern[pattern],
    sees: 'taper',
  }
}
