import { annularBasis } from '../surface/annular-basis.ts'
import { annularTerms } from '../surface/annular-terms.ts'
import type { BandTables } from './band-fit.ts'
import { quadraticAt, quadraticCount } from './quadratic-at.ts'
import type { RingSamples } from './sample-ring.ts'

/**
 * Prepares samples of a land for fits: the terms of a surface at each of them.
 *
 * @param samples light over the land
 * @param relative their relative light
 * @param options radiusRatio: inner over outer radius; level: of the terms; indexes: which samples
 * @returns tables, a row a sample
 * @throws RangeError as annularBasis does
 * Source: as annularBasis.
 * @example bandTables({ xs: new Float64Array([1]), ys: new Float64Array(1), pitch: 1,
 *   values: new Float64Array(1), isUsable: new Uint8Array([1]) }, new Float64Array(1),
 *   { radiusRatio: 0.5, level: 1, indexes: [0] }).termCount // 9
 */
export function bandTables(
  samples: RingSamples,
  relative: Float64Array,
  options: {
    readonly radiusRatio: number
    readonly level: number
    readonly indexes: readonly number[]
  },
): BandTables {
  const { radiusRatio, level, indexes } = options
  const terms = annularTerms(level)
  const xs = Float64Array.from(indexes, (i) => samples.xs[i] as number)
  const ys = Float64Array.from(indexes, (i) => samples.ys[i] as number)
  const basis = annularBasis({ terms, radiusRatio, xs, ys })
  const termCount = terms.length + 1
  const count = indexes.length
  const phi = new Float64Array(count * termCount)
  const quadratic = new Float64Array(count * quadraticCount)
  for (let i = 0; i < count; i++) {
    phi[i * termCount] = 1
    for (let k = 0; k < terms.length; k++) {
      phi[i * termCount + 1 + k] = basis[i * terms.length + k] as number
    }
    quadraticAt(xs[i] as number, ys[i] as number, quadratic, i * quadraticCount)
  }
  const values = Float64Array.from(indexes, (i) => relative[i] as number)
  return { count, termCount, phi, quadratic, relative: values }
}
