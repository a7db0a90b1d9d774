import type { Shape } from './drawing.ts'
import { bite, box, circle, disc, line, shape } from './finding-strokes.ts'

/** What is said of springs and hardware, each on its part from the side. */
export const hardwareMarks = {
  clogged: (u: number) => [coil(u, 10, 86), ...[22, 38, 54, 70].map((x) => disc(u, x, 50, 7))],
  broken: (u: number) => [coil(u, 8, 42), coil(u, 56, 88)],
  'set-short': (u: number) => [
    coil(u, 10, 58),
    line(
      u,
      [
        [86, 20],
        [86, 80],
      ],
      'dashed',
    ),
    line(u, [
      [58, 20],
      [58, 80],
    ]),
    line(
      u,
      [
        [60, 50],
        [84, 50],
      ],
      'dotted',
    ),
  ],
  'worn-coils': (u: number) => [coil(u, 10, 86), ...[21, 37, 54, 70].map((x) => flat(u, x))],
  'worn-drive': (u: number) => [
    line(u, [
      [8, 70],
      [34, 70],
      [30, 34],
      [66, 34],
      [56, 70],
      [88, 70],
    ]),
    line(
      u,
      [
        [34, 70],
        [34, 34],
      ],
      'dashed',
    ),
    shape(
      u,
      [
        [36, 40],
        [50, 40],
        [50, 62],
        [36, 62],
      ],
      'half',
    ),
  ],
  'set-screw-marks': (u: number) => [
    ...box(u, 8, 30, 80, 36),
    ...[28, 48, 68].map((x) => disc(u, x, 48, 5)),
    ...[28, 48, 68].map((x) => circle(u, x, 48, 9, 'dotted')),
  ],
  corroded: (u: number) => [
    ...box(u, 10, 26, 76, 44),
    ...[
      [22, 38, 4],
      [36, 54, 6],
      [52, 36, 3],
      [60, 56, 5],
      [74, 42, 6],
      [30, 62, 3],
    ].map(([x = 0, y = 0, r = 0]) => disc(u, x, y, r)),
  ],
  pitting: (u: number) => [
    ...box(u, 10, 30, 76, 40),
    ...[18, 30, 43, 57, 70, 80].map((x, i) => bite(u, x, 30 + (i % 2))),
    ...[24, 50, 66].map((x, i) => disc(u, x, 50 + 4 * i, 2)),
  ],
  coking: (u: number) => [
    ...box(u, 10, 52, 76, 24),
    shape(
      u,
      [
        [12, 52],
        [18, 36],
        [30, 42],
        [38, 26],
        [52, 36],
        [62, 22],
        [74, 38],
        [84, 52],
      ],
      'ink',
    ),
  ],
  cracked: (u: number) => [
    ...box(u, 10, 26, 76, 44),
    line(u, [
      [44, 20],
      [50, 36],
      [42, 48],
      [54, 60],
      [48, 76],
    ]),
  ],
  deposits: (u: number) => [
    ...box(u, 10, 56, 76, 22),
    shape(
      u,
      [
        [14, 56],
        [20, 44],
        [34, 46],
        [46, 38],
        [60, 46],
        [74, 42],
        [82, 56],
      ],
      'half',
    ),
  ],
  rubbed: (u: number) => [
    ...box(u, 10, 26, 76, 44),
    ...[34, 40, 46, 52, 58].map((y) =>
      line(u, [
        [28, y],
        [72, y],
      ]),
    ),
  ],
} satisfies Readonly<Record<string, (u: number) => readonly Shape[]>>

/** A coil spring from the side, as a zigzag of turns of 16. */
function coil(u: number, from: number, to: number): Shape {
  const count = Math.max(2, Math.round((to - from) / 8))
  const pairs = Array.from({ length: count + 1 }, (_, i) => [
    from + ((to - from) * i) / count,
    i % 2 === 0 ? 70 : 30,
  ])
  return line(u, pairs)
}

function flat(u: number, x: number): Shape {
  return shape(
    u,
    [
      [x - 5, 26],
      [x + 5, 26],
      [x + 5, 32],
      [x - 5, 32],
    ],
    'ink',
  )
}
