import { decisionLabels } from './decision-labels.ts'
import type { DecisionPictureOptions } from './decision-picture-options.ts'
import { decisionScale } from './decision-scale.ts'
import { decisionStrip } from './decision-strip.ts'
import type { Drawing, LineShape, Shape } from './drawing.ts'
import { knownBell } from './known-bell.ts'
import { boxPath, circlePath } from './path-data.ts'

const bellPx = 60
const stripPx = 12

/**
 * A result with all that is known of it, held against its limits: a bell for what is known, faint
 * within and filled beyond the limits; below it the result as a dot with whiskers of the expanded
 * uncertainty, full within and hollow beyond; below that a strip that is full where the rule
 * accepts, hatched in the guard band and empty where it rejects. A heavy post stands at each
 * limit, a dashed line at each limit of acceptance. Nothing depends on colour.
 *
 * @param options result, uncertainties (from 0), at least one limit, limits of the rule, texts,
 *   width (px, 240 to 1200)
 * @returns the drawing, 188 px high, with two limits 204
 * @throws RangeError when there is no limit, a number is not finite or the width is out of range
 * Validity: it shows a decision and makes none.
 * @example decisionPicture(options).heightPx // 188
 */
export function decisionPicture(options: DecisionPictureOptions): Drawing {
  const { widthPx, labels, lowerLimit, upperLimit } = options
  const { lower, upper } = options.acceptanceLimits
  if (!(widthPx >= 240 && widthPx <= 1200)) {
    throw new RangeError(`decisionPicture requires widthPx from 240 to 1200, got ${widthPx}`)
  }
  const at = decisionScale(options)
  const isEmpty = lower !== null && upper !== null && lower > upper
  const hasLower = lower !== null && lower !== lowerLimit && !isEmpty
  const hasUpper = upper !== null && upper !== upperLimit && !isEmpty
  const bellTopPx = hasLower && hasUpper ? 60 : 44
  const basePx = bellTopPx + bellPx
  const stripTopPx = basePx + 26
  const heightPx = basePx + 84
  const footPx = stripTopPx + stripPx + 4
  const post = (limit: number | null): Shape[] =>
    limit === null ? [] : [upright(at(limit), 18, footPx, 3)]
  const dashed = (limit: number | null): Shape[] =>
    limit === null ? [] : [{ ...upright(at(limit), bellTopPx - 8, footPx, 1.5), dash: 'dashed' }]
  const swatch = { x: 8, y: heightPx - 14, width: 11, height: 11 }
  return {
    widthPx,
    heightPx,
    shapes: [
      ...knownBell(options, at, { basePx, heightPx: bellPx }),
      ...decisionStrip(options, at, { topPx: stripTopPx, heightPx: stripPx }),
      ...dashed(hasLower ? lower : null),
      ...dashed(hasUpper ? upper : null),
      ...post(lowerLimit),
      ...post(upperLimit),
      ...result(options, at, basePx + 13),
      ...decisionLabels(options, at, {
        valuePx: basePx + 57,
        lowerPx: hasLower ? bellTopPx - 13 : null,
        upperPx: hasUpper ? 31 : null,
      }),
      { kind: 'path', d: boxPath(swatch), fill: 'accent', stroke: 'soft', strokePx: 1 },
      {
        kind: 'text',
        x: 26,
        y: heightPx - 4,
        text: labels.beyond,
        sizePx: 13,
        anchor: 'start',
        tone: 'ink',
      },
    ],
  }
}

function upright(x: number, y1: number, y2: number, strokePx: number): LineShape {
  return { kind: 'line', x1: x, x2: x, y1, y2, stroke: 'ink', strokePx }
}

function result(
  options: DecisionPictureOptions,
  at: (value: number) => number,
  y: number,
): readonly Shape[] {
  const { value, expandedUncertainty: U, lowerLimit, upperLimit } = options
  const keepsLower = lowerLimit === null || value >= lowerLimit
  const isWithin = keepsLower && (upperLimit === null || value <= upperLimit)
  const [x1, x2] = [at(value - U), at(value + U)]
  return [
    { kind: 'line', x1, x2, y1: y, y2: y, stroke: 'ink', strokePx: 2 },
    upright(x1, y - 5, y + 5, 2),
    upright(x2, y - 5, y + 5, 2),
    {
      kind: 'path',
      d: circlePath({ x: at(value), y }, 5),
      fill: isWithin ? 'ink' : 'paper',
      stroke: 'ink',
      strokePx: 2,
      part: 'result',
    },
  ]
}
