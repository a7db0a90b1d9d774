import { requireWhole } from '../check/require-whole.ts'
import { type CentreLine, fitCentreLine, type SectionCentre } from './fit-centre-line.ts'
import { smallestCylinder } from './smallest-cylinder.ts'

/** How straight the centres of the sections of a shaft lie. */
export interface CentreLineStraightness {
  /** Diameter of the narrowest cylinder that holds all centres. */
  readonly minimumZoneUm: number
  /** Twice the largest departure from the least-squares line. */
  readonly leastSquaresUm: number
  /** Departures of each section from the line through the first and the last. */
  readonly fromEnds: readonly { readonly departureUm: number; readonly directionDeg: number }[]
  /** The section that lies furthest from the line through the ends. */
  readonly bow: {
    readonly positionMm: number
    readonly departureUm: number
    readonly directionDeg: number
  }
}

/**
 * Gives how straight a shaft is, from the centres of its sections.
 *
 * minimum zone 2 x largest distance from the axis of the narrowest cylinder; bow: largest distance
 * from the line through the end sections
 *
 * @param centres three or more at different positions
 * @returns um, degrees from 0 to below 360; departures of 0 have direction 0
 * @throws RangeError with fewer, or two at one position
 * Validity: centres from the eccentricity at each section, turned about one axis: between centres
 *   or in its own bearings. On vee-blocks the shaft is turned on its own surface, and its bow and its
 *   lobes come together.
 * Source: straightness of a median line, ISO 12780-1, from memory.
 * @example centreLineStraightness([{ positionMm: 0, xUm: 0, yUm: 0 }, { positionMm: 100, xUm: 20,
 *   yUm: 0 }, { positionMm: 200, xUm: 0, yUm: 0 }]).minimumZoneUm // 20.00
 */
export function centreLineStraightness(centres: readonly SectionCentre[]): CentreLineStraightness {
  const name = 'centreLineStraightness'
  requireWhole(name, 'count of centres', centres.length, { from: 3, to: 1000 })
  const sorted = [...centres].sort((a, b) => a.positionMm - b.positionMm)
  sorted.forEach((one, i) => {
    if (i > 0 && one.positionMm === sorted[i - 1]?.positionMm) {
      throw new RangeError(`${name} requires different positions, got ${one.positionMm} twice`)
    }
  })
  const fromEnds = centres.map((one) => departureFromEnds(one, sorted))
  const largest = fromEnds.reduce(
    (best, one, i) => (one.departureUm > (fromEnds[best]?.departureUm ?? 0) ? i : best),
    0,
  )
  return {
    minimumZoneUm: 2 * largestOf(smallestCylinder(centres)),
    leastSquaresUm:
      2 *
      largestOf(
        fitCentreLine(
          centres,
          centres.map(() => 1),
        ),
      ),
    fromEnds,
    bow: {
      positionMm: centres[largest]?.positionMm ?? 0,
      ...(fromEnds[largest] ?? { departureUm: 0, directionDeg: 0 }),
    },
  }
}

function largestOf(line: CentreLine): number {
  return Math.max(...line.departuresUm.map((one) => Math.hypot(one.xUm, one.yUm)))
}

function departureFromEnds(one: SectionCentre, sorted: readonly SectionCentre[]) {
  const [first, last] = [sorted[0], sorted.at(-1)] as [SectionCentre, SectionCentre]
  const share = (one.positionMm - first.positionMm) / (last.positionMm - first.positionMm)
  const x = one.xUm - first.xUm - share * (last.xUm - first.xUm)
  const y = one.yUm - first.yUm - share * (last.yUm - first.yUm)
  const departureUm = Math.hypot(x, y)
  const deg = departureUm === 0 ? 0 : (Math.atan2(y, x) * 180) / Math.PI
  return { departureUm, directionDeg: (deg + 360) % 360 }
}
