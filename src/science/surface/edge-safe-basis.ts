import { annularBasis } from './annular-basis.ts'
import type { AnnularTerm } from './annular-terms.ts'

/**
 * Gives the terms on rings and rays, going on straight along the radius where the land was not
 * seen: a polynomial that goes on would swing up or down there.
 *
 * at r > seenTo: value(seenTo) + (r - seenTo) slope(seenTo), and alike below seenFrom
 *
 * @param input terms; radiusRatio; seenFrom, seenTo: radii between which the land was seen, outer
 *   radius 1; radii: of the rings; angleCount: rays, evenly from 0 degrees counter-clockwise
 * @returns one row a point, ring after ring, one column a term
 * @throws RangeError as annularBasis does
 * Source: on synthetic faces polynomials going on made a taper read 5 to 12 % high.
 * @example edgeSafeBasis({ terms: [{ angularOrder: 0, radialOrder: 2, isSine: false }],
 *   radiusRatio: 0.6, seenFrom: 0.8, seenTo: 0.8, radii: [1], angleCount: 1 })[0] // -0.5000
 */
export function edgeSafeBasis(input: {
  readonly terms: readonly AnnularTerm[]
  readonly radiusRatio: number
  readonly seenFrom: number
  readonly seenTo: number
  readonly radii: readonly number[]
  readonly angleCount: number
}): Float64Array {
  const { terms, radiusRatio, seenFrom, seenTo, radii, angleCount } = input
  const at = (r: number) => {
    const angles = Array.from({ length: angleCount }, (_, j) => (2 * Math.PI * j) / angleCount)
    const xs = angles.map((angle) => r * Math.cos(angle))
    const ys = angles.map((angle) => r * Math.sin(angle))
    return annularBasis({ terms, radiusRatio, xs, ys })
  }
  const size = terms.length * angleCount
  const values = new Float64Array(radii.length * size)
  // Small against the land, large against rounding.
  const h = 1e-5
  radii.forEach((r, i) => {
    const held = Math.min(Math.max(r, seenFrom), seenTo)
    const middle = at(held)
    if (held !== r) {
      const [above, below] = [at(held + h), at(held - h)]
      for (let k = 0; k < size; k++) {
        const slope = ((above[k] as number) - (below[k] as number)) / (2 * h)
        middle[k] = (middle[k] as number) + (r - held) * slope
      }
    }
    values.set(middle, i * size)
  })
  return values
}
