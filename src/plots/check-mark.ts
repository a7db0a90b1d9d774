import { outlinePath, type PointPx } from './path-data.ts'

/**
 * A tick as path data: what was done.
 *
 * @param at its middle, px
 * @param sizePx its width, px, above 0
 * @returns path data of M and L
 * @example checkMark({ x: 10, y: 10 }, 10) // M5 10L8.5 13.5L15 6.5
 */
export function checkMark({ x, y }: PointPx, sizePx: number): string {
  return outlinePath(
    [
      { x: x - sizePx * 0.5, y },
      { x: x - sizePx * 0.15, y: y + sizePx * 0.35 },
      { x: x + sizePx * 0.5, y: y - sizePx * 0.35 },
    ],
    false,
  )
}
