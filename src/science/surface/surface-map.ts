import type { AnnularSurface } from './annular-surface.ts'
import { annularTerms } from './annular-terms.ts'
import { edgeSafeBasis } from './edge-safe-basis.ts'
import type { PolarMap } from './polar-map.ts'

/**
 * Evaluates a stored surface on rings and rays, both edges included.
 *
 * @param surface as it is stored
 * @param size ringCount: from the inner to the outer edge, 2 or more; angleCount: rays
 * @returns heights in the unit of the surface, radii with the outer one 1
 * @throws RangeError when the count of coefficients is not that of the level
 * Source: as edgeSafeBasis.
 * @example surfaceMap({ radiusRatio: 0.5, level: 1, coefficients: [0, 0, 2, 0, 0, 0, 0, 0],
 *   seenFrom: 0.5, seenTo: 1 }, { ringCount: 2, angleCount: 8 }).heights[1][3] // 2.0000
 */
export function surfaceMap(
  surface: AnnularSurface,
  size: { readonly ringCount: number; readonly angleCount: number },
): PolarMap {
  const terms = annularTerms(surface.level)
  if (surface.coefficients.length !== terms.length) {
    throw new RangeError(
      `surfaceMap requires ${terms.length} coefficients, got ${surface.coefficients.length}`,
    )
  }
  const { radiusRatio } = surface
  const radii = Array.from({ length: size.ringCount }, (_, i) => {
    return radiusRatio + ((1 - radiusRatio) * i) / (size.ringCount - 1)
  })
  const basis = edgeSafeBasis({ ...surface, terms, radii, angleCount: size.angleCount })
  const heights = radii.map((_, i) =>
    Array.from({ length: size.angleCount }, (__, j) => {
      const row = (i * size.angleCount + j) * terms.length
      return surface.coefficients.reduce((sum, c, k) => sum + c * (basis[row + k] as number), 0)
    }),
  )
  const anglesDeg = Array.from({ length: size.angleCount }, (_, j) => (360 * j) / size.angleCount)
  return { radii, anglesDeg, heights }
}
