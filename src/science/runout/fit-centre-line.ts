/** A centre of a section along a shaft: its place along, and its offset from a common axis. */
export interface SectionCentre {
  readonly positionMm: number
  readonly xUm: number
  readonly yUm: number
}

/** A straight line through the centres, and how far each lies from it. */
export interface CentreLine {
  /** Of the line at position 0 and per mm along. */
  readonly xUm: number
  readonly yUm: number
  readonly xSlopeUmPerMm: number
  readonly ySlopeUmPerMm: number
  readonly departuresUm: readonly { readonly xUm: number; readonly yUm: number }[]
}

/**
 * Gives the straight line that fits the centres of the sections of a shaft best, each with its
 * weight.
 *
 * least sum of weight x distance^2: offset = mean + slope x (position - mean position)
 *
 * @param centres two or more at different positions
 * @param weights as many, 0 or more, not all 0
 * @returns um, um per mm
 * @throws RangeError where the positions are all one
 * Source: weighted least squares; JCGM 100:2008, H.3 for one offset.
 * @example fitCentreLine([{ positionMm: 0, xUm: 0, yUm: 0 }, { positionMm: 100, xUm: 20,
 *   yUm: 0 }], [1, 1]).xSlopeUmPerMm // 0.2000
 */
export function fitCentreLine(
  centres: readonly SectionCentre[],
  weights: readonly number[],
): CentreLine {
  const sum = (of: (centre: SectionCentre) => number) =>
    centres.reduce((total, centre, i) => total + (weights[i] as number) * of(centre), 0)
  const total = sum(() => 1)
  const middle = sum((one) => one.positionMm) / total
  const spread = sum((one) => (one.positionMm - middle) ** 2)
  if (!(spread > 0)) throw new RangeError('fitCentreLine requires centres at different positions')
  const lineOf = (of: (centre: SectionCentre) => number) => {
    const slope = sum((one) => (one.positionMm - middle) * of(one)) / spread
    const mean = sum(of) / total
    // About the middle: far from position 0 no digits are lost.
    const departures = centres.map((one) => of(one) - mean - slope * (one.positionMm - middle))
    return { offset: mean - slope * middle, slope, departures }
  }
  const x = lineOf((one) => one.xUm)
  const y = lineOf((one) => one.yUm)
  return {
    xUm: x.offset,
    yUm: y.offset,
    xSlopeUmPerMm: x.slope,
    ySlopeUmPerMm: y.slope,
    departuresUm: x.departures.map((xUm, i) => ({ xUm, yUm: y.departures[i] as number })),
  }
}
