import { requireRange } from '../check/require-range.ts'
import { logGamma } from '../statistics/log-gamma.ts'
import { type GlobalRisk, type GlobalRiskLimits, globalRisk } from './global-risk.ts'

/**
 * Gives the risks of accepting many items whose values can't be below 0 and scatter as a gamma
 * distribution: flatness, run-out, leakage.
 *
 * globalRisk with g(x) = x^(shape - 1) exp(-x / scale) / (Gamma(shape) scale^shape); its mean is
 * shape x scale, its standard deviation scale x sqrt(shape)
 *
 * @param input shape: from 1 to 1e4; scale: above 0, in the unit of the limits;
 *   measurementUncertainty: above 0; limits: finite; all in one unit
 * @returns both risks and the share of good items, each from 0 to 1
 * @throws RangeError when a number is out of range
 * Validity: about 8 digits; the prior has to be known, from many items of the same making.
 * Source: JCGM 106:2012, clauses 8 and 9 (from memory).
 * @example globalRiskGamma({ shape: 4, scale: 0.25, measurementUncertainty: 0.25,
 *   limits: { upperLimit: 2, upperAcceptanceLimit: 1.8 } }).falseAcceptRisk // 0.0026119
 */
export function globalRiskGamma(input: {
  readonly shape: number
  readonly scale: number
  readonly measurementUncertainty: number
  readonly limits: GlobalRiskLimits
}): GlobalRisk {
  const name = 'globalRiskGamma'
  const shape = requireRange(name, 'shape', input.shape, { from: 1, to: 1e4 })
  const scale = requireRange(name, 'scale', input.scale, {
    from: Number.MIN_VALUE,
    to: Number.MAX_VALUE,
  })
  const logFront = -logGamma(shape) - Math.log(scale)
  const density = (x: number) => {
    const ratio = x / scale
    if (ratio <= 0) return shape === 1 ? 1 / scale : 0
    return Math.exp(logFront + (shape - 1) * Math.log(ratio) - ratio)
  }
  const mean = shape * scale
  const deviation = scale * Math.sqrt(shape)
  // Halved towards 0, where a broken power has no smooth slope; then in steps of the deviation,
  // out to where the exponential tail of shape 1 has fallen to 1e-17.
  const halved = Array.from({ length: 40 }, (_, index) => mean * 2 ** (index - 40))
  const stepped = Array.from({ length: 109 }, (_, index) => mean + ((index - 24) / 2) * deviation)
  const knots = [0, ...halved, ...stepped].filter((at) => at >= 0).sort((a, b) => a - b)
  return globalRisk({ ...input, density, knots })
}
