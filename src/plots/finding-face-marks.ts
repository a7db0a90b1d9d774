import { clockPlace } from './clock-place.ts'
import type { Shape, Tone } from './drawing.ts'
import { circlePath, outlinePath } from './path-data.ts'

const outer = 42
const inner = 20
const middle = { x: 48, y: 48 }

/** The bare ring: both of its edges. */
export function ringShapes(u: number): readonly Shape[] {
  return [outer, inner].map((radius) => ({
    kind: 'path',
    d: circlePath(scaled(middle, u), radius * u),
    stroke: 'ink',
    strokePx: 2 * u,
  }))
}

/** What is said of a face, each on its ring. */
export const faceMarks = {
  'even-track': (u: number) => [band(u, 26, 34), ...ringShapes(u)],
  'wide-track': (u: number) => [band(u, 22, 40), band(u, 27, 33, 'half'), ...ringShapes(u)],
  'narrow-track': (u: number) => [
    band(u, 30, 32, 'half'),
    ...dashedCircles(u, [26, 36]),
    ...ringShapes(u),
  ],
  'patchy-track': (u: number) => [
    ...[
      [10, 70],
      [95, 120],
      [150, 235],
      [265, 290],
      [320, 345],
    ].map(([from = 0, to = 0]) => sector(u, { low: 25, high: 36, from, to })),
    ...ringShapes(u),
  ],
  'high-spots': (u: number) => [
    ...[30, 150, 270].map((deg) => dot(u, deg, 31, 6)),
    ...ringShapes(u),
  ],
  'partial-contact': (u: number) => [
    sector(u, { low: 25, high: 36, from: -70, to: 80 }),
    ...ringShapes(u),
  ],
  'heavy-outer-contact': (u: number) => [band(u, 35, outer, 'half'), ...ringShapes(u)],
  'heavy-inner-contact': (u: number) => [band(u, inner, 27, 'half'), ...ringShapes(u)],
  'heat-checks': (u: number) => [
    band(u, 25, 36),
    ...degrees(14).map((deg, i) => ray(u, deg, i % 2 === 0 ? [24, 38] : [27, 35])),
    ...ringShapes(u),
  ],
  blisters: (u: number) => [
    ...[
      [20, 27, 4],
      [70, 35, 5],
      [130, 29, 3],
      [185, 34, 5],
      [240, 26, 4],
      [305, 33, 4],
    ].map(([deg = 0, at = 0, size = 0]) => bubble(u, deg, at, size)),
    ...ringShapes(u),
  ],
  'chipped-edge': (u: number) => [
    ...ringShapes(u),
    ...[40, 95, 215, 290].map((deg) => chip(u, deg)),
  ],
  grooves: (u: number) => [...circles(u, [23, 26, 28, 31, 33, 36, 39]), ...ringShapes(u)],
} satisfies Readonly<Record<string, (u: number) => readonly Shape[]>>

type Point = { readonly x: number; readonly y: number }
const scaled = (point: Point, u: number): Point => ({ x: point.x * u, y: point.y * u })
const degrees = (count: number) => Array.from({ length: count }, (_, i) => (360 * i) / count)
const place = (u: number) => clockPlace(scaled(middle, u), true)

function band(u: number, low: number, high: number, fill: Tone = 'faint'): Shape {
  const at = scaled(middle, u)
  return { kind: 'path', d: circlePath(at, high * u) + circlePath(at, low * u), fill }
}

function circles(u: number, radii: readonly number[]): readonly Shape[] {
  const at = scaled(middle, u)
  return radii.map((radius) => ({
    kind: 'path',
    d: circlePath(at, radius * u),
    stroke: 'soft',
    strokePx: u,
  }))
}

function dashedCircles(u: number, radii: readonly number[]): readonly Shape[] {
  return circles(u, radii).map((one) => ({ ...one, dash: 'dashed' }) as Shape)
}

/** Clockwise from one angle to another. */
function sector(
  u: number,
  of: { readonly low: number; readonly high: number; readonly from: number; readonly to: number },
): Shape {
  const { low, high, from, to } = of
  const at = place(u)
  const count = Math.max(2, Math.ceil((to - from) / 6))
  const degs = Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count)
  const outline = [
    ...degs.map((deg) => at(deg, high * u)),
    ...degs.toReversed().map((deg) => at(deg, low * u)),
  ]
  return { kind: 'path', d: outlinePath(outline, true), fill: 'half' }
}

function ray(u: number, deg: number, [from = 0, to = 0]: readonly number[]): Shape {
  const at = place(u)
  return {
    kind: 'path',
    d: outlinePath([at(deg, from * u), at(deg + 2, ((from + to) / 2) * u), at(deg, to * u)], false),
    stroke: 'ink',
    strokePx: 1.5 * u,
  }
}

function dot(u: number, deg: number, radius: number, size: number): Shape {
  return { kind: 'path', d: circlePath(place(u)(deg, radius * u), size * u), fill: 'ink' }
}

function bubble(u: number, deg: number, radius: number, size: number): Shape {
  const d = circlePath(place(u)(deg, radius * u), size * u)
  return { kind: 'path', d, stroke: 'ink', strokePx: 1.5 * u }
}

/** A bite out of the outer edge. */
function chip(u: number, deg: number): Shape {
  const at = place(u)
  const points = [
    at(deg - 8, 43 * u),
    at(deg - 2, 36 * u),
    at(deg + 3, 38 * u),
    at(deg + 8, 43 * u),
  ]
  return {
    kind: 'path',
    d: outlinePath(points, true),
    fill: 'paper',
    stroke: 'ink',
    strokePx: 1.5 * u,
  }
}
