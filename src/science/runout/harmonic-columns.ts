/**
 * Gives the columns of a fit of waves to readings round a turn: ones, then the cosine and the sine
 * of each order.
 *
 * 1, cos t, sin t, cos 2 t, sin 2 t, ...
 *
 * @param anglesDeg t: finite
 * @param highestOrder whole, 0 or more
 * @returns 1 + 2 highestOrder columns as long as anglesDeg
 * Source: Fourier series: definition.
 * @example harmonicColumns([0, 90], 1)[2]?.[1] // 1
 */
export function harmonicColumns(anglesDeg: readonly number[], highestOrder: number): number[][] {
  const columns = [anglesDeg.map(() => 1)]
  for (let order = 1; order <= highestOrder; order++) {
    const angles = anglesDeg.map((deg) => (order * deg * Math.PI) / 180)
    columns.push(angles.map(Math.cos), angles.map(Math.sin))
  }
  return columns
}
