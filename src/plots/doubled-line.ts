import type { Shape } from './drawing.ts'
import { roundPx } from './round-px.ts'

/**
 * A light line with a dark one in it: seen on any ground, in any light.
 *
 * @param d path data
 * @param strokePx width of the inner line, px
 * @param dash of the inner line
 * @returns both lines
 */
export function doubledLine(
  d: string,
  strokePx: number,
  dash: 'solid' | 'dashed' = 'solid',
): Shape[] {
  return [
    { kind: 'path', d, stroke: 'paper', strokePx: roundPx(2.2 * strokePx) },
    { kind: 'path', d, stroke: 'ink', strokePx: roundPx(strokePx), dash },
  ]
}
