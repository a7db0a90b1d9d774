/** The saddle of the guide: bore over rim, and its height from lowest to highest, in bands. */
export const guideSaddle = { innerRatio: 0.7, heightBands: 2 } as const

/** Height of the saddle, in bands: high above and below, low to the left and right. */
export function saddleBands(x: number, y: number): number {
  return (guideSaddle.heightBands / 2) * (y * y - x * x)
}
