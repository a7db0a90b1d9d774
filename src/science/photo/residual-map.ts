import type { ResidualMap } from './photo-reading.ts'

const ringCount = 8
const sectorCount = 96

/**
 * Averages what a fit leaves open over rings and sectors of the land.
 *
 * @param samples xs, ys: points of the unit disc; residuals: relative light less model
 * @param range from, to: radii of the land; swing: of the bands, relative to the mean light
 * @returns means over the swing, null where there is no sample
 * Source: common practice, no source.
 * @example residualMap({ xs: [0.9], ys: [0.01], residuals: [0.1] },
 *   { from: 0.6, to: 1, swing: 0.5 }).shares[576] // 0.2
 */
export function residualMap(
  samples: {
    readonly xs: ArrayLike<number>
    readonly ys: ArrayLike<number>
    readonly residuals: ArrayLike<number>
  },
  range: { readonly from: number; readonly to: number; readonly swing: number },
): ResidualMap {
  const sums = new Float64Array(ringCount * sectorCount)
  const counts = new Int32Array(ringCount * sectorCount)
  for (let i = 0; i < samples.residuals.length; i++) {
    const x = samples.xs[i] as number
    const y = samples.ys[i] as number
    const share = (Math.hypot(x, y) - range.from) / (range.to - range.from)
    const ring = Math.min(ringCount - 1, Math.max(0, Math.floor(share * ringCount)))
    const turn = (Math.atan2(y, x) / (2 * Math.PI) + 1) % 1
    const at = ring * sectorCount + Math.min(sectorCount - 1, Math.floor(turn * sectorCount))
    sums[at] = (sums[at] as number) + (samples.residuals[i] as number)
    counts[at] = (counts[at] as number) + 1
  }
  const shares = Array.from(sums, (sum, at) => {
    const count = counts[at] as number
    return count === 0 ? null : Math.round((1000 * sum) / count / range.swing) / 1000
  })
  return { ringCount, sectorCount, from: range.from, to: range.to, shares }
}
