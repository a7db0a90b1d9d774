/**
 * Gives the largest of 1, 2 and 5 times a power of ten that is no larger: the length of a scale
 * bar that has to fit.
 *
 * @param most above 0
 * @returns in the unit of `most`
 * @throws RangeError when `most` is not above 0 or not finite
 * @example roundLength(37) // 20
 */
export function roundLength(most: number): number {
  if (!(most > 0 && Number.isFinite(most))) {
    throw new RangeError(`roundLength requires most above 0, got ${most}`)
  }
  const power = Math.floor(Math.log10(most))
  const digit = [5, 2, 1].find((one) => Number(`${one}e${power}`) <= most) ?? 1
  return Number(`${digit}e${power}`)
}
