import { madeFace, madeMarks } from '../science/marks/made-marks.ts'

/** Pixels of the edges of a made picture, 1600 by 1200. */
export const markedEdges = {
  outer: { cx: 800, cy: 600, rx: 500, ry: 500, rotationDeg: 0 },
  inner: { cx: 800, cy: 600, rx: 350, ry: 350, rotationDeg: 0 },
} as const

/** A request of the calculator of marked bands, for a face of a given height in bands. */
export function markedRequest(
  height: (r: number, angle: number) => number,
  options: { readonly count: number; readonly seed: number },
) {
  const face = madeFace(height, { radiusRatio: 0.7, tiltBands: 8, towardsDeg: 40 })
  const round = (px: number) => Math.round(px * 10) / 10
  return {
    lamp: 'helium',
    imageWidth: 1600,
    imageHeight: 1200,
    ...markedEdges,
    outerDiameterMm: 60,
    innerDiameterMm: 42,
    points: madeMarks(face, options).map(({ x, y, order }) => ({
      x: round(800 + 500 * x),
      y: round(600 - 500 * y),
      order,
    })),
    increasingTowards: 'gap-opens',
  }
}
