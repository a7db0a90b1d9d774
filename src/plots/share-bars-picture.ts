import type { Drawing } from './drawing.ts'
import { hatchPath } from './hatch-path.ts'
import { boxPath } from './path-data.ts'

const sizePx = 132

/**
 * Two bars to one scale: the true height, filled, and what the line shows of it, hatched.
 *
 * @param share of the true height that is shown, 0 to 1
 * @returns the drawing, 132 px square
 * @throws RangeError outside this range
 * @example shareBarsPicture(0.25).heightPx // 132
 */
export function shareBarsPicture(share: number): Drawing {
  if (!(share >= 0 && share <= 1)) {
    throw new RangeError(`shareBarsPicture requires share from 0 to 1, got ${share}`)
  }
  const full = { x: 26, y: 8, width: 30, height: 112 }
  const shownPx = full.height * share
  const shown = { x: 76, y: full.y + full.height - shownPx, width: 30, height: shownPx }
  const foot = full.y + full.height
  return {
    widthPx: sizePx,
    heightPx: sizePx,
    shapes: [
      { kind: 'path', d: boxPath(full), fill: 'ink', part: 'true' },
      {
        kind: 'path',
        d: boxPath(shown),
        fill: 'paper',
        stroke: 'ink',
        strokePx: 1.5,
        part: 'shown',
      },
      ...(shownPx > 0
        ? [{ kind: 'path', d: hatchPath(shown, 'rising'), stroke: 'ink', part: 'hatch' } as const]
        : []),
      { kind: 'line', x1: 10, y1: foot, x2: 122, y2: foot, stroke: 'ink', strokePx: 1.5 },
    ],
  }
}
