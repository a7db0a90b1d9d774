import type { Shape } from './drawing.ts'
import { bite, box, circle, disc, line, type Pairs, shape } from './finding-strokes.ts'

/** What is said of secondary seals, each on its section in the groove. */
export const rubberMarks = {
  swollen: (u: number) => [...groove(u), disc(u, 48, 46, 27), circle(u, 48, 50, 18, 'dashed')],
  hardened: (u: number) => [...groove(u), disc(u, 48, 50, 20), ...cracks(u)],
  'compression-set': (u: number) => [
    ...groove(u),
    lens(u, 48, 54, 24, 13),
    circle(u, 48, 50, 20, 'dashed'),
  ],
  extruded: (u: number) => [
    ...groove(u),
    disc(u, 48, 50, 20),
    shape(
      u,
      [
        [62, 34],
        [74, 24],
        [90, 24],
        [90, 29],
        [72, 32],
        [66, 40],
      ],
      'half',
    ),
  ],
  nibbled: (u: number) => [
    ...groove(u),
    disc(u, 48, 50, 20),
    ...[
      [64, 38],
      [68, 48],
      [60, 31],
    ].map(([x = 0, y = 0]) => bite(u, x, y)),
  ],
  cut: (u: number) => [
    ...groove(u),
    disc(u, 48, 50, 20),
    line(u, [
      [34, 38],
      [52, 54],
      [60, 64],
    ]),
  ],
  fretting: (u: number) => [
    ...box(u, 8, 56, 80, 28),
    disc(u, 48, 36, 19),
    ...[34, 41, 48, 55, 62].map((x) =>
      line(u, [
        [x, 58],
        [x, 68],
      ]),
    ),
  ],
} satisfies Readonly<Record<string, (u: number) => readonly Shape[]>>

/** The groove that a ring of rubber lies in, cut across. */
function groove(u: number): readonly Shape[] {
  return [
    line(u, [
      [6, 30],
      [22, 30],
      [22, 72],
      [74, 72],
      [74, 30],
      [90, 30],
    ]),
  ]
}

/** A round that was pressed flat: eight corners are round enough at this size. */
function lens(u: number, x: number, y: number, wide: number, high: number): Shape {
  const corners = Array.from({ length: 24 }, (_, i) => [
    x + wide * Math.cos((2 * Math.PI * i) / 24),
    y + high * Math.sin((2 * Math.PI * i) / 24),
  ])
  return shape(u, corners, 'half')
}

function cracks(u: number): readonly Shape[] {
  const starts: Pairs = [
    [34, 40],
    [44, 34],
    [56, 36],
    [62, 46],
  ]
  return starts.map(([x = 0, y = 0]) =>
    line(u, [
      [x, y],
      [x + 3, y + 7],
      [x + 1, y + 12],
    ]),
  )
}
