/** Even heights for lines or ticks. */
export interface HeightSteps {
  readonly stepUm: number
  /** Multiples of the step, rising. */
  readonly levelsUm: readonly number[]
}

/**
 * Round heights between the lowest and the highest, for contour lines or an axis: multiples of 1,
 * 2 or 5 times a power of ten, as many as asked for at most.
 *
 * @param range lowUm below highUm, finite
 * @param options mostCount: 2 to 50; or stepUm, where two pictures have to share one
 * @returns the step and its multiples from lowUm to highUm
 * @throws RangeError outside these ranges, or where a step gives more than 200 levels
 * @example heightSteps({ lowUm: -0.31, highUm: 0.52 }, { mostCount: 5 }).stepUm // 0.2
 */
export function heightSteps(
  range: { readonly lowUm: number; readonly highUm: number },
  options: { readonly mostCount: number } | { readonly stepUm: number },
): HeightSteps {
  const { lowUm, highUm } = range
  const span = highUm - lowUm
  if (!(span > 0 && Number.isFinite(span))) {
    throw new RangeError(`heightSteps requires lowUm below highUm, got ${lowUm} and ${highUm}`)
  }
  const stepUm = 'stepUm' in options ? options.stepUm : stepFor(span, options.mostCount)
  // A hair of room, so that an end that is a multiple is one.
  const first = Math.ceil(lowUm / stepUm - 1e-9)
  const last = Math.floor(highUm / stepUm + 1e-9)
  if (!(stepUm > 0 && last - first < 200)) {
    throw new RangeError(`heightSteps requires stepUm from ${span / 200}, got ${stepUm}`)
  }
  const count = Math.max(0, last - first + 1)
  return { stepUm, levelsUm: Array.from({ length: count }, (_, i) => (first + i) * stepUm + 0) }
}

function stepFor(span: number, mostCount: number): number {
  if (!(mostCount >= 2 && mostCount <= 50)) {
    throw new RangeError(`heightSteps requires mostCount from 2 to 50, got ${mostCount}`)
  }
  const least = span / mostCount
  const power = Math.floor(Math.log10(least))
  // Written as a decimal, so that 0.2 is 0.2 and not a product that missed it.
  const of = (digit: number, exponent: number) => Number(`${digit}e${exponent}`)
  const steps = [of(1, power), of(2, power), of(5, power), of(1, power + 1)]
  return steps.find((step) => step >= least) ?? of(2, power + 1)
}
