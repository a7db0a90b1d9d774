import type { Drawing, Shape } from './drawing.ts'
import { guideSaddle, saddleBands } from './guide-saddle.ts'
import { ringArea } from './ring-area.ts'

const sizePx = 132

/**
 * The true surface of a saddle on a ring: contour lines a quarter of a band apart, the high places
 * hatched.
 *
 * @returns the drawing, 132 px square; the same every time
 * @example saddleSurfacePicture().widthPx // 132
 */
export function saddleSurfacePicture(): Drawing {
  const ring = ringArea({ sizePx, innerRatio: guideSaddle.innerRatio })
  const heights = ring.sampled(saddleBands)
  const levels = [-0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75]
  return {
    widthPx: sizePx,
    heightPx: sizePx,
    shapes: [
      { kind: 'path', d: ring.edges, fill: 'bright', part: 'land' },
      { kind: 'path', d: ring.pathOf(heights, (h) => h - 0.5), fill: 'half', part: 'high' },
      ...levels.map((level): Shape => {
        const d = ring.pathOf(heights, (h) => h - level)
        return { kind: 'path', d, stroke: 'ink', part: `level ${level}` }
      }),
      { kind: 'path', d: ring.edges, stroke: 'ink', strokePx: 1.5, part: 'edges' },
    ],
  }
}
