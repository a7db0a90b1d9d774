import type { BandModel, BandTables } from './band-fit.ts'
import { quadraticCount } from './quadratic-at.ts'

/** Residual of each sample, and what the derivatives are made of. */
export interface BandResiduals {
  readonly residuals: Float64Array
  /** d model / d W. */
  readonly slopes: Float64Array
  /** d model / d B. */
  readonly waves: Float64Array
  /** d model / d k. */
  readonly seconds: Float64Array
}

/**
 * Gives what a model of bands leaves unexplained at each sample: relative light less model.
 *
 * @param tables the samples
 * @param model its gap may have fewer coefficients than the tables have terms: the first ones
 * @returns residuals and derivatives
 * Source: two-beam interference, with a second harmonic for the tone curve of the camera.
 * @example bandResiduals({ count: 1, termCount: 1, phi: new Float64Array([1]),
 *   quadratic: new Float64Array([1, 0, 0, 0, 0, 0]), relative: new Float64Array([0.5]) },
 *   { gap: new Float64Array(1), background: new Float64Array([0.1]),
 *   swing: new Float64Array([0.3, 0, 0, 0, 0, 0]), second: 0 }).residuals[0] // 0.1
 */
export function bandResiduals(tables: BandTables, model: BandModel): BandResiduals {
  const { count, termCount, phi, quadratic, relative } = tables
  const { gap, background, swing, second } = model
  const residuals = new Float64Array(count)
  const slopes = new Float64Array(count)
  const waves = new Float64Array(count)
  const seconds = new Float64Array(count)
  for (let i = 0; i < count; i++) {
    const row = i * termCount
    let order = 0
    for (let k = 0; k < gap.length; k++) order += (phi[row + k] as number) * (gap[k] as number)
    let level = 0
    for (let k = 0; k < background.length; k++) {
      level += (phi[row + k] as number) * (background[k] as number)
    }
    let size = 0
    for (let k = 0; k < quadraticCount; k++) {
      size += (quadratic[i * quadraticCount + k] as number) * (swing[k] as number)
    }
    const angle = 2 * Math.PI * (order - Math.round(order))
    const c = Math.cos(angle)
    const s = Math.sin(angle)
    const double = 2 * c * c - 1
    const wave = c + second * double
    residuals[i] = (relative[i] as number) - level - size * wave
    slopes[i] = -2 * Math.PI * size * (s + 4 * second * s * c)
    waves[i] = wave
    seconds[i] = size * double
  }
  return { residuals, slopes, waves, seconds }
}
