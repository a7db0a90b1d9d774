import type { PolarMap } from '../science/surface/polar-map.ts'
import type { Drawing } from './drawing.ts'
import { profileFrame } from './profile-frame.ts'

export interface CircleProfileOptions {
  readonly map: PolarMap
  readonly widthPx: number
  readonly heightPx: number
  readonly lowUm?: number | undefined
  readonly highUm?: number | undefined
  readonly heightText: (heightUm: number) => string
  readonly angleText: (angleDeg: number) => string
  readonly texts: {
    readonly outer: string
    readonly middle: string
    readonly inner: string
    readonly across: string
    readonly unit: string
  }
}

/**
 * The profile of a land around: its outer edge as a heavy line, the circle in its middle dotted,
 * its inner edge dashed, from 0 to 360 degrees.
 *
 * @param options see above; three circles or more
 * @returns the drawing
 * @throws RangeError with fewer circles, and as profileFrame
 */
export function circleProfile(options: CircleProfileOptions): Drawing {
  const { map, texts } = options
  if (!(map.radii.length >= 3)) {
    throw new RangeError(`circleProfile requires circles from 3, got ${map.radii.length}`)
  }
  const around = (row: readonly number[] = []) => [
    ...row.map((heightUm, j) => ({ at: map.anglesDeg[j] as number, heightUm })),
    { at: 360, heightUm: row[0] as number },
  ]
  const middle = Math.floor((map.radii.length - 1) / 2)
  return profileFrame({
    ...options,
    from: 0,
    to: 360,
    ticks: [0, 90, 180, 270, 360].map((at) => ({ at, text: options.angleText(at) })),
    acrossText: texts.across,
    unitText: texts.unit,
    lines: [
      { points: around(map.heights.at(-1)), strokePx: 2.2, dash: 'solid', text: texts.outer },
      { points: around(map.heights[middle]), strokePx: 1.2, dash: 'dotted', text: texts.middle },
      { points: around(map.heights[0]), strokePx: 1.2, dash: 'dashed', text: texts.inner },
    ],
  })
}
