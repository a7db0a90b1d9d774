import type { PolarMap } from '../../../src/science/surface/polar-map.ts'

/** A map of a height given by formula, outer radius 1. */
export function madeMap(
  height: (r: number, angle: number) => number,
  size: { readonly radiusRatio: number; readonly ringCount: number; readonly angleCount: number },
): PolarMap {
  const { radiusRatio, ringCount, angleCount } = size
  const radii = Array.from({ length: ringCount }, (_, i) => {
    return radiusRatio + ((1 - radiusRatio) * i) / (ringCount - 1)
  })
  const anglesDeg = Array.from({ length: angleCount }, (_, j) => (360 * j) / angleCount)
  const heights = radii.map((r) => anglesDeg.map((deg) => height(r, (deg * Math.PI) / 180)))
  return { radii, anglesDeg, heights }
}
