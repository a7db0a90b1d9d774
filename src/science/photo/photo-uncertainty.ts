import { choleskyFactor } from '../linear/cholesky-factor.ts'
import { solveTransposed } from '../linear/solve-transposed.ts'
import { seededGenerator } from '../uncertainty/seeded-generator.ts'
import type { BandFit } from './fit-bands.ts'
import { peakToValley } from './peak-to-valley.ts'
import type { SurfaceGrid } from './surface-grid.ts'

/** Parts of the standard uncertainty of a flatness read from a photograph, all in bands. */
export interface PhotoUncertainty {
  readonly statistical: number
  readonly form: number
  readonly edge: number
  readonly perspective: number
  readonly view: number
  readonly floor: number
}

const drawCount = 60
/** Errors of neighbouring samples are alike: the variance is this many times larger. */
const correlationFactor = 6

/** Standard normal numbers by the polar method, always the same. */
function normals(): () => number {
  const next = seededGenerator(20_261)
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
 * Estimates the parts of the standard uncertainty of a peak-to-valley flatness.
 *
 * statistical = 2 sd of 60 draws from the covariance of the fit; form = |fine - coarse| / 2; edge =
 * |all - seen| / 4, half of it when an edge could not be followed; perspective 0.004 bands a band
 * of tilt; view 1 %; floor 0.015
 *
 * @param fits fine and coarse fit; spread: robust standard deviation of the residuals
 * @param grids all: the whole land; seen: the part that was seen; coarse: the whole land with the
 *   terms of the coarse fit
 * @param options axisRatio: short over long axis of the outer edge; areEdgesFollowed; tiltBands:
 *   bands over the outer diameter
 * @returns the parts, in bands
 * Source: the multipliers were chosen on synthetic photographs; propagation of distributions after
 *   JCGM 101 for the first part.
 * @example photoUncertainty({ fine: { model: { gap: new Float64Array(2),
 *   background: new Float64Array(1), swing: new Float64Array(6), second: 0 }, cost: 0,
 *   normal: new Float64Array([1]), roundCount: 1 }, coarse: { model: { gap: new Float64Array(2),
 *   background: new Float64Array(1), swing: new Float64Array(6), second: 0 }, cost: 0,
 *   normal: new Float64Array([1]), roundCount: 1 }, spread: 0 },
 *   { all: { radii: [1], angleCount: 4, termCount: 1, basis: new Float64Array(4) },
 *   seen: { radii: [1], angleCount: 4, termCount: 1, basis: new Float64Array(4) },
 *   coarse: { radii: [1], angleCount: 4, termCount: 1, basis: new Float64Array(4) } },
 *   { axisRatio: 1, areEdgesFollowed: true, tiltBands: 10 }).perspective // 0.04
 */
export function photoUncertainty(
  fits: { readonly fine: BandFit; readonly coarse: BandFit; readonly spread: number },
  grids: { readonly all: SurfaceGrid; readonly seen: SurfaceGrid; readonly coarse: SurfaceGrid },
  options: {
    readonly axisRatio: number
    readonly areEdgesFollowed: boolean
    readonly tiltBands: number
  },
): PhotoUncertainty {
  const { axisRatio, areEdgesFollowed, tiltBands } = options
  const fine = fits.fine.model.gap.subarray(1)
  const pvAll = peakToValley(grids.all, fine)
  const pvSeen = peakToValley(grids.seen, fine)
  const pvCoarse = peakToValley(grids.coarse, fits.coarse.model.gap.subarray(1))
  const size = Math.round(Math.sqrt(fits.fine.normal.length))
  const lower = choleskyFactor(fits.fine.normal, size)
  const normal = normals()
  const step = fits.spread * Math.sqrt(correlationFactor)
  const drawn: number[] = []
  for (let draw = 0; draw < drawCount; draw++) {
    const z = Float64Array.from({ length: size }, normal)
    const off = solveTransposed(lower, z)
    const moved = fine.map((value, k) => value + step * (off[k + 1] ?? 0))
    drawn.push(peakToValley(grids.all, moved))
  }
  const mean = drawn.reduce((a, b) => a + b, 0) / drawCount
  const variance = drawn.reduce((a, b) => a + (b - mean) ** 2, 0) / (drawCount - 1)
  return {
    statistical: (2 * Math.sqrt(variance)) / axisRatio,
    form: Math.abs(pvAll - pvCoarse) / 2 / axisRatio,
    edge: Math.abs(pvAll - pvSeen) / (areEdgesFollowed ? 4 : 2) / axisRatio,
    perspective: 0.004 * tiltBands,
    view: (0.01 * pvAll) / axisRatio,
    floor: 0.015,
  }
}
