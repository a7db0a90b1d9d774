import { choleskyFactor } from '../linear/cholesky-factor.ts'
import { choleskySolve } from '../linear/cholesky-solve.ts'
import { annularBasis } from '../surface/annular-basis.ts'
import { annularTerms } from '../surface/annular-terms.ts'
import { bandPrior } from './band-prior.ts'
import type { LocalFrequency } from './local-frequencies.ts'

const level = 2

/** Share of the radial part of a frequency that can be trusted: a narrow land hardly shows it. */
function trusts(one: LocalFrequency, width: number) {
  const radial = Math.min(1, (width / (2.5 * one.window)) ** 2)
  const r = Math.hypot(one.x, one.y)
  return { radial, cx: one.x / r, cy: one.y / r }
}

/** The likeness of two frequencies along the ring and, as far as trusted, across it. */
function likeness(a: LocalFrequency, b: LocalFrequency, width: number): number {
  const { radial, cx, cy } = trusts(a, width)
  const across = (a.u * cx + a.v * cy) * (b.u * cx + b.v * cy)
  const along = (-a.u * cy + a.v * cx) * (-b.u * cy + b.v * cx)
  return radial * across + along
}

/** Signs along a tree that always takes the surest of the neighbours left (Prim). */
function signsOf(list: readonly LocalFrequency[], width: number): Float64Array {
  const signs = new Float64Array(list.length)
  const best = new Float64Array(list.length).fill(-1)
  const from = new Int32Array(list.length).fill(-1)
  let next = 0
  list.forEach((one, i) => {
    if (one.strength > (list[next]?.strength ?? 0)) next = i
  })
  signs[next] = 1
  for (let taken = 1; taken < list.length; taken++) {
    const here = list[next] as LocalFrequency
    list.forEach((other, i) => {
      if (signs[i] !== 0) return
      const distance = Math.hypot(other.x - here.x, other.y - here.y)
      const like = Math.abs(likeness(here, other, width))
      const size = Math.hypot(here.u, here.v) * Math.hypot(other.u, other.v)
      const nearness = Math.exp(-((distance / (1.5 * here.window)) ** 2))
      const sure = (here.strength * other.strength * nearness * like) / (size + 1e-9)
      if (sure > (best[i] as number)) {
        best[i] = sure
        from[i] = next
      }
    })
    next = -1
    list.forEach((_, i) => {
      if (signs[i] === 0 && (next < 0 || (best[i] as number) > (best[next] as number))) next = i
    })
    const parent = from[next] as number
    const like = likeness(list[parent] as LocalFrequency, list[next] as LocalFrequency, width)
    signs[next] = (signs[parent] as number) * (like >= 0 ? 1 : -1)
  }
  return signs
}

/**
 * Guesses the gap from local frequencies: their signs are made to agree from neighbour to
 * neighbour, then a surface with these slopes is fitted, robustly.
 *
 * @param list local frequencies, each known up to its sign
 * @param radiusRatio inner over outer radius
 * @returns coefficients of the terms of level 2, a constant (0) first; null with too few of them
 * Source: frequency-guided unfolding after L. Kai and Q. Kemao, Opt. Express 17, 15118 (2009), in
 *   a plain form.
 * @example gradientSeed([], 0.6) // null
 */
export function gradientSeed(
  list: readonly LocalFrequency[],
  radiusRatio: number,
): Float64Array | null {
  if (list.length < 12) return null
  const width = 1 - radiusRatio
  const terms = annularTerms(level)
  const n = terms.length
  const signs = signsOf(list, width)
  const h = 1e-4
  const at = (dx: number, dy: number) =>
    annularBasis({
      terms,
      radiusRatio,
      xs: list.map((one) => one.x + dx),
      ys: list.map((one) => one.y + dy),
    })
  const slope = (a: Float64Array, b: Float64Array) =>
    a.map((value, i) => (value - (b[i] as number)) / (2 * h))
  const dx = slope(at(h, 0), at(-h, 0))
  const dy = slope(at(0, h), at(0, -h))
  const prior = bandPrior(terms, { backgroundCount: 1, swing: 1 })
  const weights = new Float64Array(list.length).fill(1)
  let solution: Float64Array = new Float64Array(n)
  for (let round = 0; round < 5; round++) {
    const matrix = new Float64Array(n * n)
    const right = new Float64Array(n)
    for (let k = 0; k < n; k++) matrix[k * n + k] = 0.3 * (prior[1 + k] as number) + 1e-6
    list.forEach((one, i) => {
      const { radial, cx, cy } = trusts(one, width)
      const sign = signs[i] as number
      let off = 0
      for (const [ex, ey, trust] of [
        [cx, cy, radial],
        [-cy, cx, 1],
      ] as const) {
        const row = Float64Array.from(terms, (_, k) => {
          return ex * (dx[i * n + k] as number) + ey * (dy[i * n + k] as number)
        })
        const value = sign * (ex * one.u + ey * one.v)
        const weight = trust * one.strength * (weights[i] as number)
        let fitted = 0
        for (let a = 0; a < n; a++) {
          const part = weight * (row[a] as number)
          fitted += (row[a] as number) * (solution[a] as number)
          right[a] = (right[a] as number) + part * value
          for (let b = 0; b <= a; b++) {
            matrix[a * n + b] = (matrix[a * n + b] as number) + part * (row[b] as number)
          }
        }
        off += trust * (value - fitted) ** 2
      }
      if (round > 0) weights[i] = 1 / (1 + off)
    })
    solution = choleskySolve(choleskyFactor(matrix, n), right)
  }
  return Float64Array.from([0, ...solution])
}
