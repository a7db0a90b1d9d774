import type { Shape, Tone } from './drawing.ts'
import { boxPath, circlePath, outlinePath } from './path-data.ts'

/** Places in the field of a finding picture, of 96 to 96. */
export type Pairs = readonly (readonly number[])[]
const points = (u: number, pairs: Pairs) => pairs.map(([x = 0, y = 0]) => ({ x: x * u, y: y * u }))

/** A line through some points. */
export function line(
  u: number,
  pairs: Pairs,
  dash: 'solid' | 'dashed' | 'dotted' = 'solid',
): Shape {
  const d = outlinePath(points(u, pairs), false)
  return { kind: 'path', d, stroke: 'ink', strokePx: 2 * u, dash }
}

/** A filled outline. */
export function shape(u: number, pairs: Pairs, fill: Tone): Shape {
  const d = outlinePath(points(u, pairs), true)
  return { kind: 'path', d, fill, stroke: 'ink', strokePx: 1.5 * u }
}

/** A filled round. */
export function disc(u: number, x: number, y: number, radius: number): Shape {
  const d = circlePath({ x: x * u, y: y * u }, radius * u)
  return { kind: 'path', d, fill: 'half', stroke: 'ink', strokePx: 1.5 * u }
}

/** A round that is only hinted at. */
export function circle(
  u: number,
  x: number,
  y: number,
  radius: number,
  dash: 'dashed' | 'dotted',
): Shape {
  const d = circlePath({ x: x * u, y: y * u }, radius * u)
  return { kind: 'path', d, stroke: 'ink', strokePx: 1.5 * u, dash }
}

/** A round taken out of what is drawn. */
export function bite(u: number, x: number, y: number): Shape {
  const d = circlePath({ x: x * u, y: y * u }, 4.5 * u)
  return { kind: 'path', d, fill: 'paper', stroke: 'ink', strokePx: 1.5 * u }
}

/** A part from the side. */
export function box(
  u: number,
  x: number,
  y: number,
  width: number,
  height: number,
): readonly Shape[] {
  const d = boxPath({ x: x * u, y: y * u, width: width * u, height: height * u })
  return [{ kind: 'path', d, stroke: 'ink', strokePx: 2 * u }]
}
