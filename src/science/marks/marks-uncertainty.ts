import { solveTransposed } from '../linear/solve-transposed.ts'
import { peakToValley } from '../photo/peak-to-valley.ts'
import type { SurfaceGrid } from '../photo/surface-grid.ts'
import { seededGenerator } from '../uncertainty/seeded-generator.ts'

const drawCount = 60
/** Expanded uncertainty: never below this many bands, and this many standard deviations. */
const leastBands = 0.35
const coverage = 2.6

/** Standard normal numbers by the polar method, always the same. */
function normals(): () => number {
  const next = seededGenerator(20_262)
  return () => {
    for (;;) {
      const u = 2 * next() - 1
      const v = 2 * next() - 1
      const s = u * u + v * v
      if (s > 0 && s < 1) return u * Math.sqrt((-2 * Math.log(s)) / s)
    }
  }
}

/**
 * Gives the expanded uncertainty of a flatness fitted to marks, in bands.
 *
 * U = max(0.35, 2.6 sd), sd of the peak to valley over 60 draws from the covariance of the fit
 *
 * @param fit gap: the constant, then the coefficients; lower: as fitMarks gives it
 * @param grid where the peak to valley is taken
 * @returns fitSdBands and expandedBands
 * Validity: marks of the usual care on a smooth land, 20 or more; the optical flat, the lamp and
 *   temperature are not contained.
 * Source: limits chosen on synthetic faces: on 315 of nine forms that were not used to choose them
 *   U covered 98, 98 and 100 % at 20, 30 and 40 marks. Draws after JCGM 101.
 * @example marksUncertainty({ gap: new Float64Array(2), lower: new Float64Array([1, 0, 0, 1e9]) },
 *   { radii: [1], angleCount: 4, termCount: 1, basis: new Float64Array(4) }).expandedBands // 0.35
 */
export function marksUncertainty(
  fit: { readonly gap: Float64Array; readonly lower: Float64Array },
  grid: SurfaceGrid,
): { readonly fitSdBands: number; readonly expandedBands: number } {
  const normal = normals()
  const drawn = Array.from({ length: drawCount }, () => {
    const off = solveTransposed(fit.lower, Float64Array.from(fit.gap, normal))
    return peakToValley(grid, fit.gap.map((value, k) => value + (off[k] as number)).subarray(1))
  })
  const mean = drawn.reduce((a, b) => a + b, 0) / drawCount
  const variance = drawn.reduce((a, b) => a + (b - mean) ** 2, 0) / (drawCount - 1)
  const fitSdBands = Math.sqrt(variance)
  return { fitSdBands, expandedBands: Math.max(leastBands, coverage * fitSdBands) }
}
