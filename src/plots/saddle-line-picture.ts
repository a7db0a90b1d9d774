import { bandAreas } from './band-areas.ts'
import type { Drawing } from './drawing.ts'
import { guideSaddle, saddleBands } from './guide-saddle.ts'
import { outlinePath } from './path-data.ts'
import { ringArea } from './ring-area.ts'

const sizePx = 132
/** Opening of the wedge over one radius, in bands. */
const wedgeBands = 3.25

/**
 * The bands of the same saddle under a wedge, and the straight line through both rim ends of the
 * band that is nearest to the middle: what the count goes by.
 *
 * @returns the drawing, 132 px square; the same every time
 * @example saddleLinePicture().widthPx // 132
 */
export function saddleLinePicture(): Drawing {
  const ring = ringArea({ sizePx, innerRatio: guideSaddle.innerRatio })
  const [left, right] = [ring.toPx({ x: -1, y: 0 }), ring.toPx({ x: 1, y: 0 })]
  const line = outlinePath([left, right], false)
  return {
    widthPx: sizePx,
    heightPx: sizePx,
    shapes: [
      { kind: 'path', d: ring.edges, fill: 'bright', part: 'land' },
      ...bandAreas(ring, (x, y) => wedgeBands * y - saddleBands(x, y)),
      { kind: 'path', d: ring.edges, stroke: 'ink', strokePx: 1.5, part: 'edges' },
      { kind: 'path', d: line, stroke: 'paper', strokePx: 6, part: 'line ground' },
      { kind: 'path', d: line, stroke: 'accent', strokePx: 3, dash: 'dashed', part: 'line' },
    ],
  }
}
