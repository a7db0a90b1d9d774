import type { Drawing, Shape } from './drawing.ts'
import { boxPath, outlinePath } from './path-data.ts'
import { roundPx } from './round-px.ts'

export interface LimitBarOptions {
  /** The result, in the unit of the limits. */
  readonly value: number
  readonly lowerLimit?: number
  readonly upperLimit?: number
  /** Left end of the scale; 0 unless values may be negative. */
  readonly scaleStart?: number
  readonly widthPx: number
  /** The value and the limit in words, as printed: the bar rounds nothing itself. */
  readonly valueText: string
  readonly limitText: string
}

const barTopPx = 22
const barHeightPx = 10
const heightPx = 50
const sidePx = 8

/**
 * A result against its limit on one scale: the allowed part is a solid bar, the forbidden part
 * an empty one, a heavy post stands at each limit, and a pointer hangs over the value; the
 * pointer is full inside and hollow outside the limits. Nothing depends on colour.
 *
 * @param options value, at least one limit, width (px, 120 to 1200) and the two texts
 * @returns the drawing, 50 px high; the scale ends 25 % beyond the largest number shown
 * @throws RangeError when there is no limit, a number is not finite or the width is out of range
 * Validity: the pointer's place shows the number, it does not judge it: borders are judged
 * elsewhere, with the rule of the work order.
 * @example limitBar({ value: 1, upperLimit: 2, widthPx: 200, valueText: '', limitText: '' }).heightPx // 50
 */
export function limitBar(options: LimitBarOptions): Drawing {
  const scale = limitScale(options)
  const { value, lowerLimit, upperLimit, widthPx } = options
  const isWithin =
    value >= (lowerLimit ?? Number.NEGATIVE_INFINITY) &&
    value <= (upperLimit ?? Number.POSITIVE_INFINITY)
  const from = scale(lowerLimit ?? Number.NEGATIVE_INFINITY)
  const to = scale(upperLimit ?? Number.POSITIVE_INFINITY)
  const limits = [lowerLimit, upperLimit].filter((limit) => limit !== undefined)
  const whole = { x: sidePx, y: barTopPx, width: widthPx - 2 * sidePx, height: barHeightPx }
  const at = scale(value)
  const limitAt = scale(upperLimit ?? lowerLimit ?? 0)
  const shapes: Shape[] = [
    { kind: 'path', d: boxPath(whole), fill: 'paper', stroke: 'soft', strokePx: 1 },
    { kind: 'path', d: boxPath({ ...whole, x: from, width: to - from }), fill: 'faint' },
    { kind: 'path', d: boxPath(whole), stroke: 'soft', strokePx: 1 },
    ...limits.map((limit): Shape => {
      const x = roundPx(scale(limit))
      const reach = { y1: barTopPx - 4, y2: barTopPx + barHeightPx + 4 }
      return { kind: 'line', x1: x, x2: x, ...reach, stroke: 'ink', strokePx: 3 }
    }),
    pointer(at, isWithin),
    label(options.valueText, at, 11, widthPx, true),
    label(options.limitText, limitAt, heightPx - 2, widthPx, false),
  ]
  return { widthPx, heightPx, shapes }
}

/** Place of a number on the bar, px; numbers beyond the scale stand at its ends. */
function limitScale(options: LimitBarOptions): (value: number) => number {
  const { value, lowerLimit, upperLimit, widthPx, scaleStart = 0 } = options
  const numbers = [value, lowerLimit, upperLimit].filter((number) => number !== undefined)
  if (numbers.length < 2 || !numbers.every(Number.isFinite)) {
    throw new RangeError(`limitBar requires value and limits from finite numbers, got ${numbers}`)
  }
  if (!(widthPx >= 120 && widthPx <= 1200)) {
    throw new RangeError(`limitBar requires widthPx from 120 to 1200, got ${widthPx}`)
  }
  const start = Math.min(scaleStart, ...numbers)
  const span = (Math.max(...numbers) - start) * 1.25 || 1
  return (number) => {
    const share = Math.min(1, Math.max(0, (number - start) / span))
    return roundPx(sidePx + share * (widthPx - 2 * sidePx))
  }
}

function pointer(x: number, isWithin: boolean): Shape {
  const tip = { x, y: barTopPx + barHeightPx / 2 + 2 }
  const top = barTopPx - 7
  const d = outlinePath([tip, { x: x - 6, y: top }, { x: x + 6, y: top }], true)
  return { kind: 'path', d, fill: isWithin ? 'ink' : 'paper', stroke: 'ink', strokePx: 2 }
}

/** A text centred on its mark, or flush with the edge it would otherwise cross. */
function label(text: string, x: number, y: number, widthPx: number, isStrong: boolean): Shape {
  const halfPx = text.length * 3.6
  const anchor = x < halfPx ? 'start' : x > widthPx - halfPx ? 'end' : 'middle'
  const place = { start: 0, middle: x, end: widthPx }[anchor]
  return { kind: 'text', x: place, y, text, sizePx: 13, anchor, tone: 'ink', isStrong }
}
