import { requireRange } from '../check/require-range.ts'

const lanczosG = 7
const lanczosFirst = 0.999_999_999_999_809_93
const lanczosRest = [
  676.520_368_121_885_1, -1_259.139_216_722_402_8, 771.323_428_777_653_13, -176.615_029_162_140_59,
  12.507_343_278_686_905, -0.138_571_095_265_720_12, 9.984_369_578_019_571_6e-6,
  1.505_632_735_149_311_6e-7,
]

/**
 * Gives the natural logarithm of the gamma function.
 *
 * ln gamma(x) by Lanczos' series, g = 7, nine terms
 *
 * @param x from 1e-8 to 1e15
 * @returns ln gamma(x)
 * @throws RangeError outside this range
 * Validity: about 14 significant digits.
 * Source: C. Lanczos, SIAM J. Numer. Anal. B 1 (1964) 86; coefficients of P. Godfrey (from memory,
 *   checked against exact factorials).
 * @example logGamma(5) // 3.17805383035
 */
export function logGamma(x: number): number {
  requireRange('logGamma', 'x', x, { from: 1e-8, to: 1e15 })
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x)
  let series = lanczosFirst
  lanczosRest.forEach((coefficient, index) => {
    series += coefficient / (x + index)
  })
  const t = x + lanczosG - 0.5
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(series)
}
