import type { Drawing, PathShape, Shape } from './drawing.ts'
import { boxPath, circlePath, outlinePath } from './path-data.ts'

/** The five components of a seal. */
export const sealParts = [
  'rotating-face',
  'rotating-secondary',
  'spring',
  'stationary-seat',
  'stationary-secondary',
] as const

export type SealPart = (typeof sealParts)[number]

const fieldWidth = 320
const fieldHeight = 170

/**
 * A face seal cut open, upper half, schematic and to no scale: shaft below, housing right, the
 * rotating face pressed by its spring against the stationary seat, each with its secondary seal.
 * Every component is a path whose `part` is its name; the one asked for is filled and heavy.
 *
 * @param options.widthPx width, px, 120 to 1200; the height follows
 * @param options.highlight the component to point out
 * @returns the drawing
 * @throws RangeError outside this range
 * @example sealSection({ widthPx: 320 }).heightPx // 170
 */
export function sealSection(options: {
  readonly widthPx: number
  readonly highlight?: SealPart
}): Drawing {
  const { widthPx, highlight } = options
  if (!(widthPx >= 120 && widthPx <= 1200)) {
    throw new RangeError(`sealSection requires widthPx from 120 to 1200, got ${widthPx}`)
  }
  const u = widthPx / fieldWidth
  const outlines = partOutlines(u)
  const parts = sealParts.map((part): PathShape => {
    const isMarked = part === highlight
    const area = part === 'spring' ? {} : ({ fill: isMarked ? 'accent' : 'paper' } as const)
    const line = {
      stroke: isMarked ? 'accent' : 'ink',
      strokePx: (isMarked ? 3.4 : 1.6) * u,
    } as const
    return { kind: 'path', d: outlines[part], part, ...area, ...line }
  })
  return { widthPx, heightPx: fieldHeight * u, shapes: [...surroundings(u), ...parts] }
}

function partOutlines(u: number): Readonly<Record<SealPart, string>> {
  const at = (places: readonly (readonly [number, number])[], isClosed: boolean): string =>
    outlinePath(
      places.map(([x, y]) => ({ x: x * u, y: y * u })),
      isClosed,
    )
  return {
    // The nose stands out to the right and touches the seat.
    'rotating-face': at(
      [
        [124, 60],
        [164, 60],
        [164, 76],
        [180, 76],
        [180, 104],
        [164, 104],
        [164, 127],
        [153, 127],
        [153, 112],
        [136, 112],
        [136, 127],
        [124, 127],
      ],
      true,
    ),
    'rotating-secondary': circlePath({ x: 144.5 * u, y: 119.6 * u }, 7.6 * u),
    spring: at(
      [
        [56, 72],
        [61, 72],
        [70, 108],
        [80, 72],
        [90, 108],
        [100, 72],
        [110, 108],
        [118, 72],
        [124, 72],
      ],
      false,
    ),
    'stationary-seat': at(
      [
        [180, 54],
        [224, 54],
        [224, 66],
        [208, 66],
        [208, 82],
        [224, 82],
        [224, 120],
        [180, 120],
      ],
      true,
    ),
    'stationary-secondary': circlePath({ x: 216 * u, y: 74 * u }, 7.6 * u),
  }
}

/** Shaft, collar and housing: hatched, since they are cut and not part of the seal. */
function surroundings(u: number): readonly Shape[] {
  const box = (x: number, y: number, width: number, height: number): PathShape => ({
    kind: 'path',
    d: boxPath({ x: x * u, y: y * u, width: width * u, height: height * u }),
    fill: 'faint',
    stroke: 'soft',
    strokePx: u,
  })
  return [
    box(8, 128, 304, 24),
    box(36, 58, 20, 70),
    {
      kind: 'path',
      d: outlinePath(
        [
          [150, 16],
          [270, 16],
          [270, 120],
          [224, 120],
          [224, 46],
          [150, 46],
        ].map(([x = 0, y = 0]) => ({ x: x * u, y: y * u })),
        true,
      ),
      fill: 'faint',
      stroke: 'soft',
      strokePx: u,
    },
    {
      kind: 'line',
      x1: 0,
      y1: 162 * u,
      x2: fieldWidth * u,
      y2: 162 * u,
      stroke: 'soft',
      strokePx: u,
      dash: 'dashed',
    },
  ]
}
