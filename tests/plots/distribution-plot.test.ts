import { describe, expect, test } from 'vitest'
import {
  type DistributionPlotOptions,
  distributionPlot,
} from '../../src/plots/distribution-plot.ts'
import type { Drawing, LineShape, PathShape, TextShape } from '../../src/plots/drawing.ts'
import { coordinates, subpaths } from './path-points.ts'

/** Counts as the normal distribution about 10 with u 2 has them, from 4 to 16. */
function normalCounts(trials: number): number[] {
  return Array.from({ length: 60 }, (_, index) => {
    const z = (4 + 0.2 * (index + 0.5) - 10) / 2
    return (trials * 0.2 * Math.exp((-z * z) / 2)) / (2 * Math.sqrt(2 * Math.PI))
  })
}

const options: DistributionPlotOptions = {
  widthPx: 384,
  histogram: { from: 4, to: 16, counts: normalCounts(1e6) },
  trials: 1e6,
  normal: { mean: 10, standardDeviation: 2 },
  intervals: [
    { low: 6.08, high: 13.92, label: 'Budget: 6.08 to 13.92', dash: 'dashed' },
    { low: 6.1, high: 13.9, label: 'Shortest: 6.10 to 13.90', dash: 'solid' },
  ],
  axis: [4, 10, 16].map((at) => ({ at, text: at.toFixed(2) })),
  unitText: 'µm',
}

const paths = ({ shapes }: Drawing) => shapes.filter((one): one is PathShape => one.kind === 'path')
const lines = ({ shapes }: Drawing) => shapes.filter((one): one is LineShape => one.kind === 'line')
const texts = ({ shapes }: Drawing) => shapes.filter((one): one is TextShape => one.kind === 'text')
const outline = (drawing: Drawing) => {
  const path = paths(drawing).find((one) => one.stroke === 'ink' && one.dash === undefined)
  return subpaths(path?.d ?? '')[0] ?? []
}
const curve = (drawing: Drawing) =>
  paths(drawing)
    .filter((one) => one.dash === 'dashed')
    .flatMap((one) => subpaths(one.d)[0] ?? [])
const heights = (points: readonly { y: number }[]) => {
  const ys = points.map((one) => one.y)
  return Math.max(...ys) - Math.min(...ys)
}
/** Where a text lies, with letters of half their size: digits of the pages are narrower. */
const extent = ({ x, text, sizePx, anchor }: TextShape) => {
  const width = text.length * sizePx * 0.5
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2
  return [left, left + width] as const
}

describe('the drawing of trials', () => {
  test('has trials and normal curve on one scale: where they agree, the lines meet', () => {
    const drawing = distributionPlot(options)
    const steps = outline(drawing)
    for (const point of curve(drawing)) {
      const near = steps.filter((one) => Math.abs(one.x - point.x) < 4).map((one) => one.y)
      if (near.length === 0) continue
      // Within a bin of 6 px the curve rises by 8 px at most.
      expect(Math.min(...near.map((y) => Math.abs(y - point.y)))).toBeLessThan(8)
    }
    // The same peak; at its ends, three u out, the curve is still 1 px above its axis.
    expect(Math.abs(heights(curve(drawing)) - heights(steps))).toBeLessThan(2)
  })

  test('draws each interval in proportion, and tells it by its dash', () => {
    const bars = lines(distributionPlot(options)).filter((one) => one.strokePx === 2.4)
    expect(bars.map((one) => one.dash)).toEqual(['dashed', 'solid'])
    const [budget, shortest] = bars.map((one) => one.x2 - one.x1)
    expect(budget! / shortest!).toBeCloseTo(7.84 / 7.8, 6) // rounding
  })

  test.each([
    ['alike', {}],
    ['long at one end', { axis: [4, 4.6, 16].map((at) => ({ at, text: at.toFixed(9) })) }],
    [
      'with an interval far out',
      { intervals: [{ low: -30, high: 15, label: 'x'.repeat(56), dash: 'solid' as const }] },
    ],
  ])('stays within its frame, no words over others: %s', (_, more) => {
    const drawing = distributionPlot({ ...options, ...more })
    for (const path of paths(drawing)) {
      coordinates(path.d).forEach((value, index) => {
        expect(value).toBeGreaterThanOrEqual(0)
        const most = index % 2 === 0 ? drawing.widthPx : drawing.heightPx
        expect(value).toBeLessThanOrEqual(most)
      })
    }
    const all = texts(drawing)
    expect(all.length).toBeGreaterThan(4)
    for (const one of all) {
      const [left, right] = extent(one)
      expect(left).toBeGreaterThanOrEqual(0)
      expect(right).toBeLessThanOrEqual(drawing.widthPx)
      expect(one.y).toBeLessThan(drawing.heightPx)
      for (const other of all) {
        if (other === one || Math.abs(other.y - one.y) >= 12) continue
        const [from, to] = extent(other)
        expect(from >= right || to <= left, `${one.text} over ${other.text}`).toBe(true)
      }
    }
  })

  test('a budget that is far too narrow leaves the trials legible and runs out at the top', () => {
    const narrow = { mean: 10, standardDeviation: 0.05 }
    const drawing = distributionPlot({ ...options, normal: narrow })
    // Drawn whole, its peak would be 40 times as high as that of the trials.
    expect(heights(outline(drawing))).toBeGreaterThan(80)
    expect(heights(curve(drawing))).toBeGreaterThan(heights(outline(drawing)))
    expect(paths(drawing).filter((one) => one.dash === 'dashed')).toHaveLength(2)
  })

  test('a budget of nothing is an upright line at its value', () => {
    const drawing = distributionPlot({ ...options, normal: { mean: 10, standardDeviation: 0 } })
    const upright = lines(drawing).filter((one) => one.dash === 'dashed' && one.x1 === one.x2)
    expect(upright.map((one) => one.x1)).toEqual([192]) // the middle of 384
    expect(curve(drawing)).toEqual([])
  })

  test.each([
    [{ widthPx: 239 }, 'widthPx'],
    [{ widthPx: Number.NaN }, 'widthPx'],
    [{ histogram: { from: 4, to: 4, counts: [1] } }, 'from below to'],
  ])('is refused for %j', (wrong, message) => {
    expect(() => distributionPlot({ ...options, ...wrong })).toThrow(message)
  })
})
