import type { DecisionPictureOptions } from './decision-picture-options.ts'
import type { Shape } from './drawing.ts'
import { hatchPath } from './hatch-path.ts'
import { boxPath } from './path-data.ts'

/**
 * The strip that says what a rule does with each value: full where it accepts, hatched where only
 * the guard band stands between value and limit, hatched the other way from the limit out to where
 * it rejects, empty beyond.
 *
 * @param options as for decisionPicture
 * @param at place of a number, px
 * @param box top and height, px
 * @returns the shapes, with the frame last
 * @example decisionStrip(options, at, { topPx: 120, heightPx: 12 }).length // 4
 */
export function decisionStrip(
  options: DecisionPictureOptions,
  at: (value: number) => number,
  strip: { readonly topPx: number; readonly heightPx: number },
): readonly Shape[] {
  const { acceptanceLimits: accepted, rejectionLimits: rejected } = options
  const left = at(Number.NEGATIVE_INFINITY)
  const right = at(Number.POSITIVE_INFINITY)
  const box = (x1: number, x2: number) => ({
    x: x1,
    y: strip.topPx,
    width: x2 - x1,
    height: strip.heightPx,
  })
  const hatch = (x1: number, x2: number, part: 'guard' | 'outer-guard'): Shape[] => {
    if (x2 - x1 < 1) return []
    const d = hatchPath(box(x1, x2), part === 'guard' ? 'rising' : 'falling')
    return [{ kind: 'path', d, stroke: 'ink', strokePx: 1, part }]
  }
  const place = (number: number | null | undefined, open: number) =>
    number == null ? open : at(number)
  const lower = place(options.lowerLimit, left)
  const upper = place(options.upperLimit, right)
  const from = place(accepted.lower, left)
  const to = place(accepted.upper, right)
  const whole = boxPath(box(left, right))
  const inside: Shape[] =
    from < to
      ? [
          { kind: 'path', d: boxPath(box(from, to)), fill: 'faint', part: 'accepted' },
          ...hatch(lower, from, 'guard'),
          ...hatch(to, upper, 'guard'),
        ]
      : hatch(lower, upper, 'guard')
  return [
    { kind: 'path', d: whole, fill: 'paper' },
    ...inside,
    ...hatch(place(rejected?.lower, lower), lower, 'outer-guard'),
    ...hatch(upper, place(rejected?.upper, upper), 'outer-guard'),
    { kind: 'path', d: whole, stroke: 'soft', strokePx: 1 },
  ]
}
