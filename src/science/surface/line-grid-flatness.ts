import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'
import { bandHeightUm } from '../optics/band-height-um.ts'
import { umToUin } from '../units/um-to-uin.ts'

/** Where a line of the grid meets the middle of a band, and how far the band has left the line. */
export interface GridCrossing {
  /** Across and up, both in any one unit of length. */
  readonly x: number
  readonly y: number
  /** In spacings of the grid: towards where the gap opens is positive. */
  readonly departureBands: number
}

/** Flatness from straight lines laid over the picture of a face. */
export interface LineGridFlatness {
  readonly bandHeightUm: number
  /** Largest departure one way plus largest the other way, with the grid as it was laid. */
  readonly asLaidBands: number
  /** The same after the plane that the hand left in was taken out. */
  readonly bands: number
  readonly flatnessUm: number
  readonly flatnessUin: number
  /** Every part of the ring where there are crossings, lobes among them. */
  readonly sees: 'whole-surface'
}

const name = 'lineGridFlatness'

/** Departures less their least-squares plane. */
function withoutPlane(crossings: readonly GridCrossing[]): number[] {
  const count = crossings.length
  const middle = (of: (one: GridCrossing) => number): number =>
    crossings.reduce((sum, one) => sum + of(one), 0) / count
  const at = { x: middle((one) => one.x), y: middle((one) => one.y) }
  const level = middle((one) => one.departureBands)
  let [xx, xy, yy, xd, yd] = [0, 0, 0, 0, 0]
  for (const { x, y, departureBands } of crossings) {
    const [dx, dy, d] = [x - at.x, y - at.y, departureBands - level]
    xx += dx * dx
    xy += dx * dy
    yy += dy * dy
    xd += dx * d
    yd += dy * d
  }
  const spread = (xx * yy - xy * xy) / (xx + yy) ** 2
  requireRange(name, 'spread of crossings in two directions', spread, { from: 1e-6, to: 1 })
  const determinant = xx * yy - xy * xy
  const slopeX = (xd * yy - yd * xy) / determinant
  const slopeY = (yd * xx - xd * xy) / determinant
  return crossings.map(
    (one) => one.departureBands - level - slopeX * (one.x - at.x) - slopeY * (one.y - at.y),
  )
}

/**
 * Gives the flatness of a face from a grid of straight, even lines laid over the picture of its
 * bands, turned and spaced by hand until it follows them: the better manual way, for it sees lobes
 * that a count along one line does not.
 *
 * bands = max - min of the departures, less their least-squares plane;
 * flatness = bands x wavelength / (2 cos viewingAngle)
 *
 * @param input crossings: from 6 to 10 000, not all on one line, over the whole ring, both edges
 *   included; departureBands: from -1000 to 1000; wavelengthNm: in air, from 200 to 2000;
 *   viewingAngleDeg: from the normal, 0 to 80 (0 when absent)
 * @returns the departures as laid and without the plane that the hand left in, in bands, and the
 *   height of the latter in um and uin
 * @throws RangeError outside these ranges
 * Validity: of what lies between crossings it sees nothing; the hand that lays the grid drops out.
 * Source: bands as contour lines of the gap, departure over spacing as bowOverSpacingBands;
 *   least-squares reference plane: ISO 12781, from memory.
 * @example lineGridFlatness({ wavelengthNm: 587.5618, crossings: [[1, 0, 1], [0, 1, -1],
 *   [-1, 0, 1], [0, -1, -1], [0.7, 0.7, 0], [-0.7, -0.7, 0]].map(([x, y, departureBands]) =>
 *   ({ x, y, departureBands })) }).flatnessUm // 0.5876
 */
export function lineGridFlatness(input: {
  readonly crossings: readonly GridCrossing[]
  readonly wavelengthNm: number
  readonly viewingAngleDeg?: number
}): LineGridFlatness {
  const { crossings } = input
  requireRange(name, 'count of crossings', crossings.length, { from: 6, to: 10_000 })
  for (const one of crossings) {
    requireFinite(name, 'x', one.x)
    requireFinite(name, 'y', one.y)
    requireRange(name, 'departureBands', one.departureBands, { from: -1000, to: 1000 })
  }
  const bandHeight = bandHeightUm(input)
  const bands = range(withoutPlane(crossings))
  const flatnessUm = bands * bandHeight
  return {
    bandHeightUm: bandHeight,
    asLaidBands: range(crossings.map((one) => one.departureBands)),
    bands,
    flatnessUm,
    flatnessUin: umToUin(flatnessUm),
    sees: 'whole-surface',
  }
}

function range(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values)
}
