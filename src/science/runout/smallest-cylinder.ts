import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'
import { type CentreLine, fitCentreLine, type SectionCentre } from './fit-centre-line.ts'

const name = 'smallestCylinder'
const mostSteps = 20_000
const relativeGap = 1e-9

/**
 * Gives the straight line about which the narrowest cylinder holds all centres of a shaft: twice
 * its largest departure is the straightness of the axis.
 *
 * least over the line of the largest distance of a centre from it: Lawson's weights. The weighted
 * least-squares fit is a lower bound and the largest distance an upper one, and the weights move
 * until both meet.
 *
 * @param centres two or more at different positions, up to 1000
 * @returns the line and the departures, um
 * @throws RangeError outside these ranges
 * Validity: distances across the axis, for departures that are small against the length.
 * Source: C. L. Lawson 1961 (from memory), for a line in the complex plane; straightness of a median
 *   line as the diameter of a cylinder, ISO 12780-1 (from memory).
 * @example smallestCylinder([{ positionMm: 0, xUm: 0, yUm: 0 }, { positionMm: 100, xUm: 20,
 *   yUm: 0 }, { positionMm: 200, xUm: 0, yUm: 0 }]).departuresUm[1]?.xUm // 10.00
 */
export function smallestCylinder(centres: readonly SectionCentre[]): CentreLine {
  requireWhole(name, 'count of centres', centres.length, { from: 2, to: 1000 })
  for (const { positionMm, xUm, yUm } of centres) {
    for (const value of [positionMm, xUm, yUm]) requireFinite(name, 'centre', value)
  }
  // Centres on one line leave rounding alone, in which no weights come to rest.
  const nothingUm = 1e-12 * Math.max(...centres.map((one) => Math.hypot(one.xUm, one.yUm)))
  let weights = centres.map(() => 1 / centres.length)
  let best = fitCentreLine(centres, weights)
  let least = sizeOf(best).largest
  for (let step = 0; step < mostSteps; step++) {
    const line = fitCentreLine(centres, weights)
    const { distances, largest } = sizeOf(line)
    if (largest < least) [best, least] = [line, largest]
    const bound = Math.sqrt(distances.reduce((sum, d, i) => sum + (weights[i] ?? 0) * d * d, 0))
    if (least <= nothingUm || least - bound <= relativeGap * least) break
    const moved = distances.map((d, i) => (weights[i] as number) * d)
    const total = moved.reduce((sum, one) => sum + one, 0)
    weights = moved.map((one) => one / total)
  }
  return best
}

function sizeOf(line: CentreLine) {
  const distances = line.departuresUm.map((one) => Math.hypot(one.xUm, one.yUm))
  return { distances, largest: Math.max(...distances) }
}
