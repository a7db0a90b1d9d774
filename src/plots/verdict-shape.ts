import type { Drawing, Shape } from './drawing.ts'
import { boxPath, circlePath, outlinePath } from './path-data.ts'

/** How a result, a requirement or a work order stands. */
export const verdictKinds = [
  'pass',
  'conditional-pass',
  'conditional-fail',
  'fail',
  'undecidable',
  'open',
  'missing',
  'refused',
  'conceded',
  'conceded-open',
] as const

export type VerdictKind = (typeof verdictKinds)[number]

/**
 * The sign of a verdict, told apart by outline and weight alone, so it holds in greys, on a
 * copy of a copy and for every eye: pass is a closed ring with a tick, fail a full square with a
 * cross cut out; the conditional ones are the same with a broken ring and an empty square; open is
 * a broken ring, undecidable a ring cut in two, missing a triangle, refused a lozenge with a bar,
 * conceded a pennant with a tick, and with a bar where something else was not judged.
 *
 * @param verdict what to show
 * @param sizePx width and height, px, 12 to 400
 * @returns the drawing
 * @throws RangeError outside this range
 * @example verdictShape('pass', 24).shapes.length // 2
 */
export function verdictShape(verdict: VerdictKind, sizePx: number): Drawing {
  if (!(sizePx >= 12 && sizePx <= 400)) {
    throw new RangeError(`verdictShape requires sizePx from 12 to 400, got ${sizePx}`)
  }
  return { widthPx: sizePx, heightPx: sizePx, shapes: signs[verdict](sizePx / 24) }
}

// Drawn on a field of 24 by 24; `u` is one of its units in px.
const signs: Readonly<Record<VerdictKind, (u: number) => readonly Shape[]>> = {
  pass: (u) => [
    { kind: 'path', d: ring(u, 9.6), stroke: 'ink', strokePx: 2.4 * u },
    line(u, [7.2, 12.4, 10.7, 15.9, 16.8, 8.6], 2.6),
  ],
  'conditional-pass': (u) => [
    { kind: 'path', d: ring(u, 9.6), stroke: 'ink', strokePx: 2.2 * u, dash: 'dashed' },
    line(u, [7.2, 12.4, 10.7, 15.9, 16.8, 8.6], 2.6),
  ],
  'conditional-fail': (u) => [
    {
      kind: 'path',
      d: boxPath({ x: 3 * u, y: 3 * u, width: 18 * u, height: 18 * u }),
      stroke: 'ink',
      strokePx: 2.2 * u,
    },
    line(u, [7.8, 7.8, 16.2, 16.2], 2.6),
    line(u, [16.2, 7.8, 7.8, 16.2], 2.6),
  ],
  undecidable: (u) => [
    { kind: 'path', d: ring(u, 9.6), stroke: 'ink', strokePx: 2.2 * u },
    line(u, [12, 2.4, 12, 21.6], 2.6),
  ],
  fail: (u) => [
    {
      kind: 'path',
      d: boxPath({ x: 2 * u, y: 2 * u, width: 20 * u, height: 20 * u }),
      fill: 'ink',
    },
    line(u, [7.4, 7.4, 16.6, 16.6], 3, 'paper'),
    line(u, [16.6, 7.4, 7.4, 16.6], 3, 'paper'),
  ],
  open: (u) => [
    { kind: 'path', d: ring(u, 9.6), stroke: 'ink', strokePx: 2.2 * u, dash: 'dashed' },
  ],
  missing: (u) => [
    {
      kind: 'path',
      d: outlinePath(scaled(u, [12, 2.6, 22.4, 21, 1.6, 21]), true),
      stroke: 'ink',
      strokePx: 2.2 * u,
    },
    line(u, [12, 9, 12, 14.2], 2.4),
    line(u, [12, 16.6, 12, 18.4], 2.4),
  ],
  refused: (u) => [
    {
      kind: 'path',
      d: outlinePath(scaled(u, [12, 1.4, 22.6, 12, 12, 22.6, 1.4, 12]), true),
      fill: 'ink',
    },
    line(u, [6.8, 12, 17.2, 12], 3, 'paper'),
  ],
  conceded: (u) => [pennant(u), line(u, [7.6, 9.8, 10.9, 13.2, 16.6, 6.6], 2.6)],
  'conceded-open': (u) => [pennant(u), line(u, [7.4, 9.4, 16.6, 9.4], 2.6)],
}

function pennant(u: number): Shape {
  return {
    kind: 'path',
    d: outlinePath(scaled(u, [2.6, 2.6, 21.4, 2.6, 21.4, 13.4, 12, 22.2, 2.6, 13.4]), true),
    stroke: 'ink',
    strokePx: 2.2 * u,
  }
}

function ring(u: number, radius: number): string {
  return circlePath({ x: 12 * u, y: 12 * u }, radius * u)
}

function line(
  u: number,
  places: readonly number[],
  weight: number,
  stroke: 'ink' | 'paper' = 'ink',
): Shape {
  const d = outlinePath(scaled(u, places), false)
  return { kind: 'path', d, stroke, strokePx: weight * u }
}

function scaled(u: number, places: readonly number[]): { x: number; y: number }[] {
  const points: { x: number; y: number }[] = []
  for (let index = 0; index + 1 < places.length; index += 2) {
    points.push({ x: (places[index] ?? 0) * u, y: (places[index + 1] ?? 0) * u })
  }
  return points
}
