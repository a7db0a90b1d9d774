import { annularTerms } from '../surface/annular-terms.ts'
import { edgeSafeBasis } from '../surface/edge-safe-basis.ts'

/** Rings and rays on which a fitted surface is evaluated, with its terms there. */
export interface SurfaceGrid {
  readonly radii: readonly number[]
  readonly angleCount: number
  readonly termCount: number
  readonly basis: Float64Array
}

const ringCount = 17
const angleCount = 180

/**
 * Prepares the grid of 17 rings and 180 rays on which the height of a surface is taken.
 *
 * @param input radiusRatio; level; seenFrom, seenTo: radii between which the land was seen; from,
 *   to: first and last ring
 * @returns the terms at each point of the grid
 * @throws RangeError as annularBasis does
 * Source: as edgeSafeBasis; the counts were chosen on synthetic faces.
 * @example surfaceGrid({ radiusRatio: 0.6, level: 1, seenFrom: 0.6, seenTo: 1, from: 0.6, to: 1 })
 *   .basis.length // 24480
 */
export function surfaceGrid(input: {
  readonly radiusRatio: number
  readonly level: number
  readonly seenFrom: number
  readonly seenTo: number
  readonly from: number
  readonly to: number
}): SurfaceGrid {
  const terms = annularTerms(input.level)
  const radii = Array.from({ length: ringCount }, (_, i) => {
    return input.from + ((input.to - input.from) * i) / (ringCount - 1)
  })
  const basis = edgeSafeBasis({ ...input, terms, radii, angleCount })
  return { radii, angleCount, termCount: terms.length, basis }
}
