import { choleskyFactor } from '../linear/cholesky-factor.ts'
import { choleskySolve } from '../linear/cholesky-solve.ts'
import type { BandModel, BandTables } from './band-fit.ts'
import { type BandResiduals, bandResiduals } from './band-residuals.ts'
import { quadraticCount } from './quadratic-at.ts'

/** How a fit is run. */
export interface FitOptions {
  /** 1 / sd^2 of every parameter, as bandPrior gives it. */
  readonly prior: Float64Array
  /** Residuals far beyond it lose their weight; relative light. */
  readonly scale: number
  /** Independent values that the samples are worth; errors of neighbours are alike. */
  readonly effectiveCount: number
  /** Standard deviation of the light, relative; weighs the prior. */
  readonly noise: number
  readonly mostRounds: number
  /** The fit ends when the cost falls by less than this share. */
  readonly tolerance: number
}

/** A fit with its cost, in units of relative light squared. */
export interface BandFit {
  readonly model: BandModel
  readonly cost: number
  /** Robust normal matrix with the prior, row by row, lower triangle. */
  readonly normal: Float64Array
  readonly roundCount: number
}

const rowsTogether = 4

/** Adds the products of four rows to the lower triangle; four at once halve the memory traffic. */
function addProducts(
  normal: Float64Array,
  rows: Float64Array,
  weighted: Float64Array,
  size: number,
): void {
  for (let i = 0; i < size; i++) {
    const a0 = weighted[i] as number
    const a1 = weighted[size + i] as number
    const a2 = weighted[2 * size + i] as number
    const a3 = weighted[3 * size + i] as number
    const at = i * size
    for (let j = 0; j <= i; j++) {
      normal[at + j] =
        (normal[at + j] as number) +
        a0 * (rows[j] as number) +
        a1 * (rows[size + j] as number) +
        a2 * (rows[2 * size + j] as number) +
        a3 * (rows[3 * size + j] as number)
    }
  }
}

/** Normal matrix and gradient of the weighted samples. */
function equations(
  tables: BandTables,
  model: BandModel,
  current: BandResiduals,
  scale: number,
): { normal: Float64Array; right: Float64Array } {
  const gapCount = model.gap.length
  const backgroundCount = model.background.length
  const size = gapCount + backgroundCount + quadraticCount + 1
  const normal = new Float64Array(size * size)
  const right = new Float64Array(size)
  const rows = new Float64Array(rowsTogether * size)
  const weighted = new Float64Array(rowsTogether * size)
  const { count, termCount, phi, quadratic } = tables
  for (let start = 0; start < count; start += rowsTogether) {
    for (let k = 0; k < rowsTogether; k++) {
      const i = start + k
      const to = k * size
      if (i >= count) {
        rows.fill(0, to, to + size)
        weighted.fill(0, to, to + size)
        continue
      }
      const slope = current.slopes[i] as number
      const wave = current.waves[i] as number
      const from = i * termCount
      for (let c = 0; c < gapCount; c++) rows[to + c] = slope * (phi[from + c] as number)
      for (let c = 0; c < backgroundCount; c++) rows[to + gapCount + c] = phi[from + c] as number
      const at = to + gapCount + backgroundCount
      for (let c = 0; c < quadraticCount; c++) {
        rows[at + c] = wave * (quadratic[i * quadraticCount + c] as number)
      }
      rows[to + size - 1] = current.seconds[i] as number
      const residual = current.residuals[i] as number
      const weight = 1 / (1 + (residual / scale) ** 2)
      for (let c = 0; c < size; c++) {
        const part = weight * (rows[to + c] as number)
        weighted[to + c] = part
        right[c] = (right[c] as number) + part * residual
      }
    }
    addProducts(normal, rows, weighted, size)
  }
  return { normal, right }
}

const toVector = (model: BandModel) =>
  Float64Array.from([...model.gap, ...model.background, ...model.swing, model.second])

function toModel(vector: Float64Array, like: BandModel): BandModel {
  const g = like.gap.length
  const b = g + like.background.length
  return {
    gap: vector.slice(0, g),
    background: vector.slice(g, b),
    swing: vector.slice(b, b + quadraticCount),
    second: vector[b + quadraticCount] as number,
  }
}

function costOf(residuals: Float64Array, vector: Float64Array, options: CostOptions): number {
  const { scale, weights, means } = options
  let cost = 0
  for (let i = 0; i < residuals.length; i++) {
    cost += Math.log1p(((residuals[i] as number) / scale) ** 2)
  }
  cost *= scale * scale
  for (let k = 0; k < vector.length; k++) {
    cost += (weights[k] as number) * ((vector[k] as number) - (means[k] as number)) ** 2
  }
  return cost
}

interface CostOptions {
  readonly scale: number
  readonly weights: Float64Array
  readonly means: Float64Array
}

/**
 * Fits bands to light by Levenberg and Marquardt, with Cauchy weights and Gaussian priors.
 *
 * cost = sum scale^2 log(1 + (residual / scale)^2)
 *   + sum (count / effectiveCount) noise^2 (x - mean)^2 / sd^2; the means are 0 but for the swing
 *
 * @param tables the samples
 * @param start where to begin; its lengths say how many terms the fit has
 * @param options scale: residuals far beyond it lose their weight
 * @returns the best model found, its cost, and the normal matrix there
 * Source: K. Levenberg (1944), D. Marquardt (1963), from memory.
 * @example fitBands({ count: 1, termCount: 1, phi: new Float64Array([1]),
 *   quadratic: new Float64Array([1, 0, 0, 0, 0, 0]), relative: new Float64Array([0.5]) },
 *   { gap: new Float64Array(1), background: new Float64Array(1),
 *   swing: new Float64Array([0.5, 0, 0, 0, 0, 0]), second: 0 },
 *   { prior: new Float64Array(9).fill(1), scale: 1, effectiveCount: 1, noise: 0.1,
 *   mostRounds: 5, tolerance: 0.001 }).cost // 0.0000
 */
export function fitBands(tables: BandTables, start: BandModel, options: FitOptions): BandFit {
  const share = (tables.count / options.effectiveCount) * options.noise ** 2
  const weights = options.prior.map((one) => one * share)
  let vector: Float64Array = toVector(start)
  const means = new Float64Array(vector.length)
  const swingAt = start.gap.length + start.background.length
  means[swingAt] = start.swing[0] as number
  const costOptions = { scale: options.scale, weights, means }
  let model = start
  let current = bandResiduals(tables, model)
  let cost = costOf(current.residuals, vector, costOptions)
  let damping = 1e-2
  let normal: Float64Array = new Float64Array(0)
  let roundCount = 0
  const size = vector.length
  while (roundCount < options.mostRounds) {
    roundCount++
    const built = equations(tables, model, current, options.scale)
    normal = built.normal
    const right = built.right
    for (let k = 0; k < size; k++) {
      const weight = weights[k] as number
      normal[k * size + k] = (normal[k * size + k] as number) + weight + 1e-9
      right[k] = (right[k] as number) - weight * ((vector[k] as number) - (means[k] as number))
    }
    const before = cost
    let isBetter = false
    for (let attempt = 0; attempt < 6 && !isBetter; attempt++) {
      const damped = normal.slice()
      for (let k = 0; k < size; k++) {
        damped[k * size + k] = (damped[k * size + k] as number) * (1 + damping)
      }
      const step = choleskySolve(choleskyFactor(damped, size), right)
      const next = vector.map((value, k) => value + (step[k] as number))
      const nextModel = toModel(next, model)
      const nextResiduals = bandResiduals(tables, nextModel)
      const nextCost = costOf(nextResiduals.residuals, next, costOptions)
      if (nextCost < cost) {
        isBetter = true
        vector = next
        model = nextModel
        current = nextResiduals
        cost = nextCost
        damping = Math.max(damping / 6, 1e-7)
      } else damping *= 5
    }
    if (!isBetter || before - cost < options.tolerance * before) break
  }
  return { model, cost, normal, roundCount }
}
