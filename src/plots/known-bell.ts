import type { DecisionPictureOptions } from './decision-picture-options.ts'
import type { Shape } from './drawing.ts'
import { outlinePath } from './path-data.ts'

const reachU = 3.5
const stepCount = 32

/**
 * The normal bell of what is known of a result, faint within the limits and filled beyond; cut at
 * 0 where nothing is below. Without uncertainty there is none.
 *
 * @param options as for decisionPicture
 * @param at place of a number, px
 * @param box base line and height of the top of the bell above it, px
 * @returns one area for each piece between limits
 * @example knownBell(options, at, { basePx: 100, heightPx: 60 }).length // 2
 */
export function knownBell(
  options: DecisionPictureOptions,
  at: (value: number) => number,
  box: { readonly basePx: number; readonly heightPx: number },
): readonly Shape[] {
  const { value, standardUncertainty: u, isNonNegative = false } = options
  if (u === 0) return []
  const from = isNonNegative ? Math.max(0, value - reachU * u) : value - reachU * u
  const to = Math.max(from, value + reachU * u)
  const density = (x: number) => Math.exp(-(((x - value) / u) ** 2) / 2)
  const highest = density(Math.max(from, value))
  const y = (x: number) => box.basePx - (box.heightPx * density(x)) / highest
  const lower = Math.min(to, Math.max(from, options.lowerLimit ?? from))
  const upper = Math.min(to, Math.max(from, options.upperLimit ?? to))
  const piece = (start: number, end: number, fill: 'faint' | 'accent'): Shape[] => {
    if (!(end > start)) return []
    const curve = Array.from({ length: stepCount + 1 }, (_, step) => {
      const x = start + ((end - start) * step) / stepCount
      return { x: at(x), y: y(x) }
    })
    const feet = [
      { x: at(end), y: box.basePx },
      { x: at(start), y: box.basePx },
    ]
    const d = outlinePath([...curve, ...feet], true)
    return [{ kind: 'path', d, fill, stroke: 'soft', strokePx: 1, part: fillPart[fill] }]
  }
  return [
    ...piece(from, lower, 'accent'),
    ...piece(lower, upper, 'faint'),
    ...piece(upper, to, 'accent'),
  ]
}

const fillPart = { faint: 'within', accent: 'beyond' } as const
