import type { SurfaceGrid } from './surface-grid.ts'

/**
 * Gives the height from the lowest to the highest point of a surface, after taking away the plane
 * that fits it best by area.
 *
 * max - min of (height - a - b x - c y), area-weighted least squares
 *
 * @param grid where it is evaluated, as surfaceGrid gives it
 * @param coefficients of the terms, without a constant, as many as the grid has terms or fewer
 * @returns in the unit of the coefficients
 * Source: least-squares reference plane, ISO 12781 (from memory).
 * @example peakToValley({ radii: [1], angleCount: 4, termCount: 1,
 *   basis: new Float64Array([1, -1, 1, -1]) }, [0.5]) // 1
 */
export function peakToValley(grid: SurfaceGrid, coefficients: ArrayLike<number>): number {
  const { radii, angleCount, termCount, basis } = grid
  const used = Math.min(termCount, coefficients.length)
  const heights = new Float64Array(radii.length * angleCount)
  const cosines = Float64Array.from({ length: angleCount }, (_, j) =>
    Math.cos((2 * Math.PI * j) / angleCount),
  )
  const sines = Float64Array.from({ length: angleCount }, (_, j) =>
    Math.sin((2 * Math.PI * j) / angleCount),
  )
  // On even rays x, y and the constant are square to each other: three separate sums.
  let [alongX, alongY, square] = [0, 0, 0]
  for (let i = 0; i < radii.length; i++) {
    const r = radii[i] as number
    for (let j = 0; j < angleCount; j++) {
      const point = i * angleCount + j
      let height = 0
      for (let k = 0; k < used; k++) {
        height += (basis[point * termCount + k] as number) * (coefficients[k] as number)
      }
      heights[point] = height
      alongX += r * height * r * (cosines[j] as number)
      alongY += r * height * r * (sines[j] as number)
    }
    square += (r * r * r * angleCount) / 2
  }
  let [highest, lowest] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  for (let i = 0; i < radii.length; i++) {
    const r = radii[i] as number
    for (let j = 0; j < angleCount; j++) {
      const plane = (r * (alongX * (cosines[j] as number) + alongY * (sines[j] as number))) / square
      const height = (heights[i * angleCount + j] as number) - plane
      if (height > highest) highest = height
      if (height < lowest) lowest = height
    }
  }
  return highest - lowest
}
