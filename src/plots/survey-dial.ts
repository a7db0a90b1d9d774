import { arrowShapes } from './arrow-shapes.ts'
import { checkMark } from './check-mark.ts'
import { clockPlace } from './clock-place.ts'
import type { Drawing, Shape } from './drawing.ts'
import { indicatorSign } from './indicator-sign.ts'
import { circlePath, outlinePath, type PointPx } from './path-data.ts'
import { roundPx } from './round-px.ts'
import type { SurveyDialOptions, SurveyDialPlace } from './survey-dial-options.ts'

/** Of half the drawing: ring of the numbers, surface that is swept, second edge of the part. */
const shares = {
  outside: { numbers: 0.86, swept: 0.5, edge: 0.16 },
  inside: { numbers: 0.84, swept: 0.52, edge: 0.68 },
  face: { numbers: 0.87, swept: 0.5, edge: 0.3 },
} as const

interface Dial {
  readonly options: SurveyDialOptions
  readonly centre: PointPx
  readonly half: number
  readonly at: (angleDeg: number, radiusPx: number) => PointPx
  /** By how much the part is turned in the drawing. */
  readonly turnedDeg: number
}

/**
 * What is to be read next, as it looks at the machine: the part from its end with its positions
 * numbered round it, those done ticked, the next one large with the indicator on it, a filled mark
 * at 0 and an arrow the way it goes round. A closing reading is a second ring round the first
 * position. Where the part turns under the indicator, the next position lies on top.
 *
 * @param options see SurveyDialOptions
 * @returns the drawing, and where the positions lie in it
 * @throws RangeError for a size out of range, and without positions
 */
export function surveyDial(options: SurveyDialOptions): {
  readonly drawing: Drawing
  readonly places: readonly SurveyDialPlace[]
} {
  const { sizePx, anglesDeg, nextIndex, isClockwise, surface } = options
  if (!(sizePx >= 280 && sizePx <= 900)) {
    throw new RangeError(`surveyDial requires sizePx from 280 to 900, got ${sizePx}`)
  }
  if (anglesDeg.length === 0) throw new RangeError('surveyDial requires positions from 1, got 0')
  const centre = { x: sizePx / 2, y: sizePx / 2 }
  const place = clockPlace(centre, isClockwise)
  const nextDeg = nextIndex === null ? 0 : (anglesDeg[nextIndex % anglesDeg.length] as number)
  const turnedDeg = options.isIndicatorStanding ? -nextDeg : 0
  const at = (deg: number, px: number) => place(deg + turnedDeg, px)
  const dial: Dial = { options, centre, half: sizePx / 2, at, turnedDeg }
  const ringPx = dial.half * shares[surface].numbers
  const radiusPx = markRadiusPx(anglesDeg, ringPx)
  const places = anglesDeg.map((deg, index) => ({ index, at: at(deg, ringPx), radiusPx }))
  return {
    drawing: {
      widthPx: sizePx,
      heightPx: sizePx,
      shapes: [
        ...partShapes(dial),
        ...turningArrow(dial),
        ...nextIndicator(dial, nextDeg),
        ...places.flatMap((one) => positionShapes(dial, one)),
      ],
    },
    places,
  }
}

/** As large as the distance of the nearest two allows, so that none touches the next. */
function markRadiusPx(anglesDeg: readonly number[], ringPx: number): number {
  const sorted = [...new Set(anglesDeg.map((deg) => ((deg % 360) + 360) % 360))].sort(
    (a, b) => a - b,
  )
  const gaps = sorted.map((deg, i) => (sorted[i + 1] ?? (sorted[0] as number) + 360) - deg)
  const nearest = 2 * ringPx * Math.sin((Math.min(180, ...gaps) * Math.PI) / 360)
  return roundPx(Math.max(4, Math.min(ringPx * 0.115, nearest * 0.36)))
}

function partShapes({ options, centre, half, at }: Dial): readonly Shape[] {
  const { swept, edge } = shares[options.surface]
  const isShaft = options.surface === 'outside'
  const { nextIndex, anglesDeg } = options
  const count = anglesDeg.length
  const [sweptPx, edgePx] = [half * swept, half * edge]
  const body = isShaft
    ? circlePath(centre, sweptPx)
    : `${circlePath(centre, Math.max(sweptPx, edgePx))}${circlePath(centre, Math.min(sweptPx, edgePx))}`
  const track = options.surface === 'face' ? [(sweptPx + edgePx) / 2] : []
  const markPx = isShaft || options.surface === 'face' ? sweptPx : edgePx
  const markAt = [at(0, markPx - 15), at(-7, markPx), at(7, markPx)]
  const hole = isShaft ? sweptPx - 15 : Math.min(sweptPx, edgePx)
  const markText = at(0, hole - 12)
  // In a bore the indicator would stand on the word.
  const isWordHidden =
    options.surface === 'inside' && nextIndex !== null && anglesDeg[nextIndex % count] === 0
  const word: Shape = {
    kind: 'text',
    x: markText.x,
    y: roundPx(markText.y + 4),
    text: options.texts.mark,
    sizePx: 12,
    anchor: 'middle',
    tone: 'ink',
  }
  return [
    { kind: 'path', d: body, fill: 'faint', stroke: 'ink', strokePx: 2, part: 'body' },
    ...track.map(
      (px): Shape => ({
        kind: 'path',
        d: circlePath(centre, px),
        stroke: 'soft',
        dash: 'dashed',
        part: 'track',
      }),
    ),
    { kind: 'path', d: outlinePath(markAt, true), fill: 'ink', part: 'mark' },
    ...(isWordHidden ? [] : [word]),
  ]
}

/** Which way the positions follow each other: the indicator goes with them, the part against. */
function turningArrow({ options, centre, half }: Dial): readonly Shape[] {
  const goes = options.isIndicatorStanding ? !options.isClockwise : options.isClockwise
  const place = clockPlace(centre, goes)
  const r = half * (options.surface === 'face' ? 0.12 : 0.2)
  const arc = Array.from({ length: 23 }, (_, i) => place(-130 + 10 * i, r))
  const style = { tone: 'ink', strokePx: 2.4, headPx: 12, part: 'turning' } as const
  return [
    { kind: 'path', d: outlinePath(arc, false), stroke: 'ink', strokePx: 2.4, part: 'turning arc' },
    ...arrowShapes(place(90, r), place(90 + (11 * 180) / (Math.PI * r) + 14, r), style),
  ]
}

/** The tip on the surface at the next position; none when the turn is done. */
function nextIndicator(dial: Dial, nextDeg: number): readonly Shape[] {
  const { options, half, at, turnedDeg } = dial
  if (options.nextIndex === null) return []
  const { swept, edge } = shares[options.surface]
  const tipPx = options.surface === 'face' ? (half * (swept + edge)) / 2 : half * swept
  const seen = (options.isClockwise ? 1 : -1) * (nextDeg + turnedDeg)
  const towards = options.surface === 'inside' ? seen + 180 : seen
  return indicatorSign(at(nextDeg, tipPx), towards, half * 0.075)
}

function positionShapes(dial: Dial, place: SurveyDialPlace): readonly Shape[] {
  const { options } = dial
  const { index, at } = place
  const count = options.anglesDeg.length
  const isNext = options.nextIndex !== null && options.nextIndex % count === index
  const isDone = options.doneIndexes.includes(index) && !isNext
  const radiusPx = isNext ? Math.max(15, place.radiusPx * 1.2) : place.radiusPx
  const isClosing = options.isClosed && index === 0
  const text: Shape = {
    kind: 'text',
    x: at.x,
    y: roundPx(at.y + (isNext ? 6 : 4.5)),
    text: options.texts.position(index),
    sizePx: isNext ? 17 : 13,
    anchor: 'middle',
    tone: isNext ? 'paper' : 'ink',
    isStrong: isNext,
  }
  const size = Math.min(radiusPx, 12)
  const tick: Shape = {
    kind: 'path',
    d: checkMark(at, size),
    stroke: 'ink',
    strokePx: 2.4,
    part: 'done',
  }
  const words = isDone ? [tick] : radiusPx < 8 ? [] : [text]
  return [
    ...(isClosing
      ? [ring(at, radiusPx + 3.5, { stroke: 'ink', strokePx: 1.4, part: 'closing' })]
      : []),
    ring(at, radiusPx, {
      fill: isNext ? 'accent' : 'paper',
      stroke: isNext ? 'accent' : 'ink',
      strokePx: isDone ? 1 : 1.6,
      part: isNext ? 'next' : isDone ? 'ticked' : 'waiting',
    }),
    ...words,
  ]
}

function ring(
  at: PointPx,
  radiusPx: number,
  look: Omit<Extract<Shape, { kind: 'path' }>, 'kind' | 'd'>,
): Shape {
  return { kind: 'path', d: circlePath(at, radiusPx), ...look }
}
