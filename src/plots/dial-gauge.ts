import { clockPlace } from './clock-place.ts'
import type { Drawing, Shape } from './drawing.ts'
import { circlePath, outlinePath, type PointPx } from './path-data.ts'
import { roundPx } from './round-px.ts'

export interface DialGaugeOptions {
  /** Width and height, px, 200 to 900. */
  readonly sizePx: number
  /** Graduations of one turn of the needle, 20 to 200. */
  readonly graduationCount: number
  /** Every how many graduations one has a number. */
  readonly numberedEvery: number
  /** Where the needle stands, in graduations from 0; null: no needle. */
  readonly needle: number | null
  /** The number at a graduation, counted from 0 on top, below 0 left of it. */
  readonly numberText: (graduations: number) => string
  /** What one graduation is. */
  readonly unitText: string
}

/** What a script needs to tell which graduation was tapped. */
export interface DialGaugeGeometry {
  readonly centre: PointPx
  /** Of the scale, px. */
  readonly radiusPx: number
  /** Within this radius a tap says nothing. */
  readonly deadPx: number
  readonly graduationCount: number
}

/**
 * The face of an indicator with 0 on top, plus to the right and minus to the left, half a turn
 * each way: every graduation a stroke, fifth ones longer, numbers where asked, and a needle. A tap
 * at x, y means the graduation nearest to
 * graduationCount atan2(x - centre.x, centre.y - y) / 360 degrees.
 *
 * @param options see above
 * @returns the drawing and its geometry
 * @throws RangeError outside these ranges
 * @example dialGauge({ sizePx: 300, graduationCount: 100, numberedEvery: 10, needle: null,
 *   numberText: String, unitText: '0.01 mm' }).geometry.centre.x // 150
 */
export function dialGauge(options: DialGaugeOptions): {
  readonly drawing: Drawing
  readonly geometry: DialGaugeGeometry
} {
  const { sizePx, graduationCount } = options
  if (!(sizePx >= 200 && sizePx <= 900)) {
    throw new RangeError(`dialGauge requires sizePx from 200 to 900, got ${sizePx}`)
  }
  if (!(Number.isInteger(graduationCount) && graduationCount >= 20 && graduationCount <= 200)) {
    throw new RangeError(
      `dialGauge requires graduationCount from 20 to 200, got ${graduationCount}`,
    )
  }
  const centre = { x: sizePx / 2, y: sizePx / 2 }
  const radiusPx = sizePx / 2 - 8
  const place = clockPlace(centre, true)
  const at = (graduations: number, px: number) => place((graduations * 360) / graduationCount, px)
  return {
    drawing: {
      widthPx: sizePx,
      heightPx: sizePx,
      shapes: [
        { kind: 'path', d: circlePath(centre, radiusPx + 5), fill: 'paper', part: 'face' },
        rim(centre, radiusPx + 5),
        ...strokes(options, at, radiusPx),
        ...numbers(options, at, radiusPx),
        {
          kind: 'text',
          x: centre.x,
          y: roundPx(centre.y + radiusPx * 0.36),
          text: options.unitText,
          sizePx: 13,
          anchor: 'middle',
          tone: 'soft',
        },
        ...needle(options, at, radiusPx, centre),
      ],
    },
    geometry: { centre, radiusPx, deadPx: radiusPx * 0.2, graduationCount },
  }
}

type Place = (graduations: number, px: number) => PointPx

function rim(centre: PointPx, radiusPx: number): Shape {
  return { kind: 'path', d: circlePath(centre, radiusPx), stroke: 'ink', strokePx: 2, part: 'rim' }
}

function strokes(
  { graduationCount, numberedEvery }: DialGaugeOptions,
  at: Place,
  radiusPx: number,
) {
  const all = Array.from({ length: graduationCount }, (_, i) => i)
  const path = (wanted: (i: number) => boolean, lengthPx: number): string =>
    all
      .filter(wanted)
      .map((i) => outlinePath([at(i, radiusPx), at(i, radiusPx - lengthPx)], false))
      .join('')
  const isNumbered = (i: number) => i % numberedEvery === 0
  const shapes: readonly Shape[] = [
    {
      kind: 'path',
      d: path((i) => i % 5 !== 0 && !isNumbered(i), 7),
      stroke: 'ink',
      strokePx: 1,
      part: 'graduations',
    },
    {
      kind: 'path',
      d: path((i) => i % 5 === 0 && !isNumbered(i), 11),
      stroke: 'ink',
      strokePx: 1.4,
      part: 'fifths',
    },
    { kind: 'path', d: path(isNumbered, 15), stroke: 'ink', strokePx: 2.2, part: 'numbered' },
  ]
  return shapes.filter((one) => one.kind !== 'path' || one.d !== '')
}

function numbers(
  { graduationCount, numberedEvery, numberText }: DialGaugeOptions,
  at: Place,
  radiusPx: number,
): readonly Shape[] {
  const half = Math.floor(graduationCount / 2)
  const count = Math.ceil(graduationCount / numberedEvery)
  return Array.from({ length: count }, (_, i) => i * numberedEvery).map((graduations): Shape => {
    const place = at(graduations, radiusPx - 31)
    const signed = graduations > half ? graduations - graduationCount : graduations
    return {
      kind: 'text',
      x: place.x,
      y: roundPx(place.y + 5),
      text: numberText(signed),
      sizePx: 14,
      anchor: 'middle',
      tone: 'ink',
      isStrong: signed === 0,
    }
  })
}

function needle(
  { needle: graduations }: DialGaugeOptions,
  at: Place,
  radiusPx: number,
  centre: PointPx,
): readonly Shape[] {
  const hub: Shape = { kind: 'path', d: circlePath(centre, 7), fill: 'ink', part: 'hub' }
  if (graduations === null) return [hub]
  const tip = at(graduations, radiusPx - 9)
  const length = Math.hypot(tip.x - centre.x, tip.y - centre.y)
  const [ux, uy] = [(tip.x - centre.x) / length, (tip.y - centre.y) / length]
  const side = (sign: number): PointPx => ({
    x: centre.x - ux * 20 + sign * uy * 4.5,
    y: centre.y - uy * 20 - sign * ux * 4.5,
  })
  return [
    {
      kind: 'path',
      d: outlinePath([tip, side(1), side(-1)], true),
      fill: 'accent',
      stroke: 'paper',
      strokePx: 1,
      part: 'needle',
    },
    hub,
  ]
}
