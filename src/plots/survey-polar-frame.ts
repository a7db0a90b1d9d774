import { arrowShapes } from './arrow-shapes.ts'
import type { Shape } from './drawing.ts'
import { circlePath, outlinePath, type PointPx } from './path-data.ts'
import { roundPx } from './round-px.ts'
import type { PolarReading, SurveyPolarTexts } from './survey-polar-options.ts'

const textPx = 11
/** More labels than this would run into each other on a phone. */
const mostLabels = 12
const quarters = [0, 90, 180, 270] as const

/**
 * What stands round a polar plot: the rim with a tick at every position, their angles (at quarters
 * where there are too many), a filled mark at 0 and an arrow in the direction of rising angles.
 *
 * @param points the positions
 * @param frame centre and radius of the plot, px; where an angle lies; texts
 * @returns the shapes
 */
export function surveyPolarFrame(
  points: readonly PolarReading[],
  frame: {
    readonly centre: PointPx
    readonly rimPx: number
    readonly at: (angleDeg: number, radiusPx: number) => PointPx
    /** Where a triangle stands on the rim, so that the arrow keeps off; null: nowhere. */
    readonly highestDeg: number | null
    readonly texts: Pick<SurveyPolarTexts, 'angle' | 'mark'>
  },
): readonly Shape[] {
  const { centre, rimPx, at, texts } = frame
  const positions = [...new Set(points.map((one) => ((one.angleDeg % 360) + 360) % 360))]
  const ticks = positions.map((deg): string =>
    outlinePath([at(deg, rimPx), at(deg, rimPx - 6)], false),
  )
  const rays = quarters.map((deg) => outlinePath([at(deg, 10), at(deg, rimPx - 6)], false))
  const angles = positions.length <= mostLabels && farApart(positions) ? positions : quarters
  return [
    { kind: 'path', d: rays.join(''), stroke: 'soft', strokePx: 0.5, part: 'quarters' },
    { kind: 'path', d: circlePath(centre, rimPx), stroke: 'ink', strokePx: 1.2, part: 'rim' },
    { kind: 'path', d: ticks.join(''), stroke: 'ink', strokePx: 1.2, part: 'positions' },
    {
      kind: 'path',
      d: outlinePath([at(0, rimPx - 9), at(-5, rimPx), at(5, rimPx)], true),
      fill: 'ink',
      part: 'mark',
    },
    ...angles.filter((deg) => deg !== 0).map((deg) => label(at, deg, rimPx, texts.angle(deg))),
    { ...label(at, 0, rimPx, texts.mark), isStrong: true } as Shape,
    ...turningArrow(at, rimPx, frame.highestDeg),
  ]
}

function farApart(positions: readonly number[]): boolean {
  const sorted = [...positions].sort((a, b) => a - b)
  return sorted.every((deg, i) => (sorted[i + 1] ?? (sorted[0] as number) + 360) - deg >= 15)
}

function label(
  at: (angleDeg: number, radiusPx: number) => PointPx,
  deg: number,
  rimPx: number,
  text: string,
): Shape {
  const place = at(deg, rimPx + 21)
  return {
    kind: 'text',
    x: place.x,
    y: roundPx(place.y + 4),
    text,
    sizePx: textPx,
    anchor: 'middle',
    tone: 'soft',
  }
}

/** Along the rim from a little past the mark, or opposite where the highest place is there. */
function turningArrow(
  at: (angleDeg: number, radiusPx: number) => PointPx,
  rimPx: number,
  highestDeg: number | null,
): readonly Shape[] {
  const r = rimPx + 6
  const isTaken = highestDeg !== null && highestDeg < 40
  const from = isTaken ? 187 : 7
  const arc = Array.from({ length: 9 }, (_, i) => at(from + 2 * i, r))
  const style = { tone: 'ink', strokePx: 1.6, headPx: 8, part: 'turning' } as const
  return [
    { kind: 'path', d: outlinePath(arc, false), stroke: 'ink', strokePx: 1.6, part: 'turning arc' },
    ...arrowShapes(at(from + 14, r), at(from + 22, r), style),
  ]
}
