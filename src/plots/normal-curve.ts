import type { Shape } from './drawing.ts'
import { outlinePath } from './path-data.ts'

const stepCount = 64
/** Beyond, the curve lies on its axis. */
const widestInDeviations = 6
const look = { stroke: 'ink', strokePx: 1.6, dash: 'dashed' } as const

/**
 * The density of a normal distribution as a dashed curve. Where it is higher than its frame it
 * runs out at the top, in two branches; one without width is an upright line.
 *
 * @param options standardDeviation 0 or more; from below to: ends of the axis; ceiling above 0:
 *   density at the top of the frame; xOf, yOf: places of values and densities, px
 * @returns up to two paths, or the line
 * @example normalCurve({ mean: 0, standardDeviation: 1, from: -3, to: 3, ceiling: 1,
 *   xOf: (x) => x, yOf: (y) => y }).length // 1
 */
export function normalCurve(options: {
  readonly mean: number
  readonly standardDeviation: number
  readonly from: number
  readonly to: number
  readonly ceiling: number
  readonly xOf: (value: number) => number
  readonly yOf: (density: number) => number
}): Shape[] {
  const { mean, standardDeviation: deviation, from, to, ceiling, xOf, yOf } = options
  if (deviation === 0) {
    const x = xOf(mean)
    return [{ kind: 'line', x1: x, y1: yOf(0), x2: x, y2: yOf(ceiling), ...look }]
  }
  const top = 1 / (deviation * Math.sqrt(2 * Math.PI))
  const low = Math.max(from, mean - widestInDeviations * deviation)
  const high = Math.min(to, mean + widestInDeviations * deviation)
  // How far from the mean the curve comes down to the ceiling.
  const outside = top > ceiling ? deviation * Math.sqrt(2 * Math.log(top / ceiling)) : 0
  const branches =
    outside === 0
      ? [[low, high] as const]
      : [
          [low, Math.min(high, mean - outside)] as const,
          [Math.max(low, mean + outside), high] as const,
        ]
  return branches
    .filter(([begin, end]) => begin < end)
    .map(([begin, end]) => {
      const points = Array.from({ length: stepCount + 1 }, (_, index) => {
        const value = begin + ((end - begin) * index) / stepCount
        const z = (value - mean) / deviation
        return { x: xOf(value), y: yOf(top * Math.exp((-z * z) / 2)) }
      })
      return { kind: 'path', d: outlinePath(points, false), ...look }
    })
}
