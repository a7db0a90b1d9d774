import { choleskyFactor } from '../linear/cholesky-factor.ts'
import { choleskySolve } from '../linear/cholesky-solve.ts'
import { quadraticAt, quadraticCount } from './quadratic-at.ts'
import type { RingSamples } from './sample-ring.ts'

/** Weighted quadratic through the light, by the normal equations of six terms. */
function fitQuadratic(samples: RingSamples, weights: Float64Array): Float64Array {
  const n = quadraticCount
  const matrix = new Float64Array(n * n)
  const right = new Float64Array(n)
  const row = new Float64Array(n)
  for (let i = 0; i < samples.xs.length; i++) {
    const weight = weights[i] as number
    if (weight === 0) continue
    quadraticAt(samples.xs[i] as number, samples.ys[i] as number, row, 0)
    for (let a = 0; a < n; a++) {
      right[a] = (right[a] as number) + weight * (row[a] as number) * (samples.values[i] as number)
      for (let b = 0; b <= a; b++) {
        matrix[a * n + b] =
          (matrix[a * n + b] as number) + weight * (row[a] as number) * (row[b] as number)
      }
    }
  }
  // A trace of ridge: on a narrow land the square is nearly the constant.
  for (let a = 0; a < n; a++) {
    matrix[a * n + a] = (matrix[a * n + a] as number) * (1 + 1e-6) + 1e-9
  }
  return choleskySolve(choleskyFactor(matrix, n), right)
}

/**
 * Gives the light over the land relative to its slow background.
 *
 * relative = light / P2(x, y) - 1, P2 a robust quadratic
 *
 * @param samples light over the land
 * @returns one value a sample, 0 where the sample can't be used
 * Source: common practice, no source.
 * @example relativeLight({ xs: new Float64Array(1), ys: new Float64Array(1), pitch: 1,
 *   values: new Float64Array([0.5]), isUsable: new Uint8Array([1]) })[0] // 0.0000
 */
export function relativeLight(samples: RingSamples): Float64Array {
  const count = samples.xs.length
  const weights = Float64Array.from(samples.isUsable)
  const background = new Float64Array(count)
  const row = new Float64Array(quadraticCount)
  for (let round = 0; round < 6; round++) {
    const fit = fitQuadratic(samples, weights)
    let squares = 0
    let sum = 0
    for (let i = 0; i < count; i++) {
      quadraticAt(samples.xs[i] as number, samples.ys[i] as number, row, 0)
      let value = 0
      for (let a = 0; a < quadraticCount; a++) value += (row[a] as number) * (fit[a] as number)
      background[i] = value
      squares += (weights[i] as number) * ((samples.values[i] as number) - value) ** 2
      sum += weights[i] as number
    }
    // Bands swing by about 1.4 standard deviations; glare lies far beyond and loses its weight.
    const width = 3 * Math.sqrt(squares / Math.max(sum, 1))
    for (let i = 0; i < count; i++) {
      const off = ((samples.values[i] as number) - (background[i] as number)) / (width + 1e-12)
      weights[i] = (samples.isUsable[i] as number) * Math.max(0, 1 - off * off)
    }
  }
  const least = 0.02 * background.reduce((a, b) => Math.max(a, b), 0) + 1e-6
  return background.map((value, i) => {
    if (samples.isUsable[i] === 0) return 0
    return (samples.values[i] as number) / Math.max(value, least) - 1
  })
}
