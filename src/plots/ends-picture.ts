import { arrowShapes } from './arrow-shapes.ts'
import type { Drawing, Shape } from './drawing.ts'
import { indicatorSign } from './indicator-sign.ts'
import { boxPath, outlinePath } from './path-data.ts'
import { roundPx } from './round-px.ts'

const fieldWidth = 320
const fieldHeight = 164

/**
 * What to do for a reading between two ends, from the side: the shaft in its bearings with the
 * indicator on its end or on top of it, and a heavy arrow the way it is to be pushed now. The other
 * end is a dashed arrow. At rest of a lift there is no arrow: nothing holds the shaft.
 *
 * @param options widthPx: 240 to 900, the height follows; movement: along the shaft or up; end:
 *   0 first (at rest), 1 second (moved); texts of the two ends
 * @returns the drawing
 * @throws RangeError for a width out of range
 */
export function endsPicture(options: {
  readonly widthPx: number
  readonly movement: 'along' | 'up'
  readonly end: 0 | 1
  readonly texts: { readonly first: string; readonly second: string }
}): Drawing {
  const { widthPx, movement, end, texts } = options
  if (!(widthPx >= 240 && widthPx <= 900)) {
    throw new RangeError(`endsPicture requires widthPx from 240 to 900, got ${widthPx}`)
  }
  const u = widthPx / fieldWidth
  const point = (x: number, y: number) => ({ x: x * u, y: y * u })
  const push = (from: readonly [number, number], to: readonly [number, number], isNow: boolean) =>
    isNow
      ? arrowShapes(point(...from), point(...to), {
          tone: 'accent',
          strokePx: 5 * u,
          headPx: 16 * u,
          part: 'push',
        })
      : [
          {
            kind: 'path',
            d: outlinePath([point(...from), point(...to)], false),
            stroke: 'soft',
            strokePx: 1.5 * u,
            dash: 'dashed',
            part: 'other end',
          } satisfies Shape,
        ]
  const arrows =
    movement === 'along'
      ? [...push([156, 126], [92, 126], end === 0), ...push([176, 126], [240, 126], end === 1)]
      : push([84, 140], [84, 104], end === 1)
  const indicator =
    movement === 'along'
      ? indicatorSign(point(54, 82), 270, 13 * u)
      : indicatorSign(point(84, 68), 0, 15 * u)
  return {
    widthPx,
    heightPx: roundPx(fieldHeight * u),
    shapes: [...machine(u), ...indicator, ...arrows, ...words(u, movement, end, texts)],
  }
}

/** The shaft with its end left, and the bearing housing that carries it. */
function machine(u: number): readonly Shape[] {
  const box = (x: number, y: number, width: number, height: number): string =>
    boxPath({ x: x * u, y: y * u, width: width * u, height: height * u })
  const housing = `${box(170, 40, 110, 28)}${box(170, 96, 110, 16)}`
  return [
    { kind: 'path', d: housing, fill: 'half', stroke: 'soft', strokePx: u, part: 'housing' },
    {
      kind: 'path',
      d: box(54, 68, 252, 28),
      fill: 'faint',
      stroke: 'ink',
      strokePx: 2 * u,
      part: 'shaft',
    },
    {
      kind: 'line',
      x1: roundPx(40 * u),
      x2: roundPx(318 * u),
      y1: roundPx(82 * u),
      y2: roundPx(82 * u),
      stroke: 'soft',
      strokePx: u,
      dash: 'dashed',
    },
  ]
}

function words(
  u: number,
  movement: 'along' | 'up',
  end: 0 | 1,
  texts: { readonly first: string; readonly second: string },
): readonly Shape[] {
  const text = (x: number, y: number, of: 0 | 1, anchor: 'start' | 'end'): Shape => ({
    kind: 'text',
    x: roundPx(x * u),
    y: roundPx(y * u),
    text: of === 0 ? texts.first : texts.second,
    sizePx: 13,
    anchor,
    tone: end === of ? 'ink' : 'soft',
    isStrong: end === of,
  })
  return movement === 'along'
    ? [text(158, 152, 0, 'end'), text(174, 152, 1, 'start')]
    : [text(118, 34, 0, 'start'), text(104, 134, 1, 'start')]
}
