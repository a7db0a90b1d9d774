import type { DecisionPictureOptions } from './decision-picture-options.ts'
import type { TextShape } from './drawing.ts'
import { roundPx } from './round-px.ts'

const sizePx = 13
/** A generous mean width of a letter of that size. */
const letterPx = 6.2
const gapPx = 6

const widthOf = (text: string) => text.length * letterPx

function text(x: number, y: number, words: string, anchor: TextShape['anchor']): TextShape {
  return { kind: 'text', x: roundPx(x), y, text: words, sizePx, anchor, tone: 'ink' }
}

/** Centred on its mark, or flush with the edge that it would otherwise cross. */
function centred(x: number, y: number, words: string, widthPx: number): TextShape {
  const half = widthOf(words) / 2
  if (x < half) return text(0, y, words, 'start')
  if (x > widthPx - half) return text(widthPx, y, words, 'end')
  return text(x, y, words, 'middle')
}

/** To the right of a mark, or undefined where that would cross `endPx`. */
function rightOf(x: number, y: number, words: string, endPx: number): TextShape | undefined {
  return x + gapPx + widthOf(words) <= endPx ? text(x + gapPx, y, words, 'start') : undefined
}

/** To the left of a mark, or undefined where that would cross `startPx`. */
function leftOf(x: number, y: number, words: string, startPx: number): TextShape | undefined {
  return x - gapPx - widthOf(words) >= startPx ? text(x - gapPx, y, words, 'end') : undefined
}

/** Over its post each, or apart to either side of the middle between them. */
function limitTexts(options: DecisionPictureOptions, at: (value: number) => number): TextShape[] {
  const { lowerLimit, upperLimit, labels, widthPx } = options
  const y = 12
  if (lowerLimit === null || upperLimit === null) {
    const words = lowerLimit === null ? labels.upperLimit : labels.lowerLimit
    return [centred(at(upperLimit ?? lowerLimit ?? 0), y, words, widthPx)]
  }
  const [lowerPx, upperPx] = [widthOf(labels.lowerLimit), widthOf(labels.upperLimit)]
  const clamp = (x: number, halfPx: number) => Math.min(widthPx - halfPx, Math.max(halfPx, x))
  const from = clamp(at(lowerLimit), lowerPx / 2)
  const to = clamp(at(upperLimit), upperPx / 2)
  if (to - from >= (lowerPx + upperPx) / 2 + gapPx) {
    return [from, to].map((x, index) =>
      centred(x, y, index === 0 ? labels.lowerLimit : labels.upperLimit, widthPx),
    )
  }
  const middle = Math.min(widthPx - upperPx - gapPx, Math.max(lowerPx + gapPx, (from + to) / 2))
  return [
    text(middle - gapPx, y, labels.lowerLimit, 'end'),
    text(middle + gapPx, y, labels.upperLimit, 'start'),
  ]
}

/** On the accepted side of its line; without room there, beyond a post: no word crosses one. */
function acceptanceText(
  options: DecisionPictureOptions,
  at: (value: number) => number,
  side: 'lower' | 'upper',
  y: number,
): TextShape[] {
  const { lowerLimit, upperLimit, widthPx } = options
  const limit = options.acceptanceLimits[side]
  if (limit === null) return []
  const words = side === 'lower' ? options.labels.lowerAcceptance : options.labels.upperAcceptance
  const x = at(limit)
  const firstPx = lowerLimit === null ? 0 : at(lowerLimit)
  const lastPx = upperLimit === null ? widthPx : at(upperLimit)
  const within = side === 'lower' ? rightOf(x, y, words, lastPx) : leftOf(x, y, words, firstPx)
  const left = () => leftOf(firstPx, y, words, 0)
  const right = () => rightOf(lastPx, y, words, widthPx)
  const beyond = side === 'lower' ? (left() ?? right()) : (right() ?? left())
  return [within ?? beyond ?? centred(x, y, words, widthPx)]
}

/**
 * The words of a picture of a decision: the limits over their posts, the limits of acceptance
 * beside their dashed lines on the accepted side, the result under its dot.
 *
 * @param options as for decisionPicture
 * @param at place of a number, px
 * @param rows base lines of the result and of each limit of acceptance, px; null for one that is
 *   not drawn
 * @returns the texts
 * @example decisionLabels(options, at, { valuePx: 160, lowerPx: null, upperPx: 31 }).length // 3
 */
export function decisionLabels(
  options: DecisionPictureOptions,
  at: (value: number) => number,
  rows: {
    readonly valuePx: number
    readonly lowerPx: number | null
    readonly upperPx: number | null
  },
): readonly TextShape[] {
  const { lowerPx, upperPx, valuePx } = rows
  return [
    ...limitTexts(options, at),
    ...(lowerPx === null ? [] : acceptanceText(options, at, 'lower', lowerPx)),
    ...(upperPx === null ? [] : acceptanceText(options, at, 'upper', upperPx)),
    {
      ...centred(at(options.value), valuePx, options.labels.value, options.widthPx),
      isStrong: true,
    },
  ]
}
