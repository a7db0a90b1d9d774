import type { DecisionPictureOptions } from './decision-picture-options.ts'
import { roundPx } from './round-px.ts'

/** The scale begins and ends so far inside the picture. */
const sidePx = 8
/** So many standard uncertainties to either side are shown of what is known. */
const shownU = 3.5

/**
 * Gives the place of a number in a picture of a decision, px from the left: everything that is
 * drawn, and 7 % beyond on either side. Numbers further out stand at the ends.
 *
 * @param options as for decisionPicture
 * @returns a function from a number, infinite allowed, to its place
 * @throws RangeError when there is no limit or a number is not finite
 * @example decisionScale({ value: 0, standardUncertainty: 0, expandedUncertainty: 0, lowerLimit: 0,
 *   upperLimit: 1, acceptanceLimits: { lower: 0, upper: 1 }, widthPx: 130 })(Infinity) // 122
 */
export function decisionScale(
  options: Omit<DecisionPictureOptions, 'labels'>,
): (value: number) => number {
  const { value, standardUncertainty, expandedUncertainty, lowerLimit, upperLimit } = options
  const { acceptanceLimits: accepted, rejectionLimits: rejected, widthPx } = options
  const reach = Math.max(shownU * standardUncertainty, expandedUncertainty)
  const limits = [lowerLimit, upperLimit, accepted.lower, accepted.upper]
  const shown = [...limits, rejected?.lower ?? null, rejected?.upper ?? null].filter(
    (one) => one !== null,
  )
  const numbers = [value - reach, value + reach, ...shown]
  if ((lowerLimit === null && upperLimit === null) || !numbers.every(Number.isFinite)) {
    throw new RangeError(`decisionPicture requires finite numbers and a limit, got ${numbers}`)
  }
  const least = Math.min(...numbers)
  const most = Math.max(...numbers)
  const pad = 0.07 * (most - least) || Math.abs(value) || 1
  const span = most - least + 2 * pad
  return (number) => {
    const share = Math.min(1, Math.max(0, (number - least + pad) / span))
    return roundPx(sidePx + share * (widthPx - 2 * sidePx))
  }
}
