import { describe, expect, it } from 'vitest'
import type { PathShape, TextShape } from '../../src/plots/drawing.ts'
import { drawnRatio } from '../../src/plots/drawn-ratio.ts'
import { flatnessMap } from '../../src/plots/flatness-map.ts'
import { surfaceFigures } from '../../src/science/surface/surface-figures.ts'
import { madeMap } from '../science/surface/made-map.ts'
import { coordinates } from './path-points.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'

const heightText = (um: number) => um.toFixed(2)
const angleText = (deg: number) => `${deg}°`
const made = (height: (r: number, a: number) => number, radiusRatio = 0.5) =>
  surfaceFigures(madeMap(height, { radiusRatio, ringCount: 17, angleCount: 180 })).map
const drawn = (map: ReturnType<typeof made>, sizePx = 360, stepUm?: number) =>
  flatnessMap({ map, sizePx, stepUm, heightText, angleText })
const paths = (drawing: ReturnType<typeof drawn>, part: string) =>
  drawing.shapes.filter(
    (shape): shape is PathShape => shape.kind === 'path' && shape.part?.startsWith(part) === true,
  )
const texts = (drawing: ReturnType<typeof drawn>) =>
  drawing.shapes.filter((shape): shape is TextShape => shape.kind === 'text')

const saddle = made((r, a) => 0.5 * r * r * Math.cos(2 * a))

describe('flatnessMap', () => {
  it('draws each line where the surface has its height', () => {
    const picture = drawn(saddle)
    let checkedCount = 0
    for (const path of paths(picture, 'line')) {
      const level = Number(path.part?.slice('line '.length))
      const at = coordinates(path.d)
      for (let i = 0; i < at.length; i += 2) {
        const [x, y] = [(at[i] as number) - 180, 180 - (at[i + 1] as number)]
        const r = Math.hypot(x, y) / (180 - 38)
        const height = 0.5 * r * r * Math.cos(2 * Math.atan2(y, x))
        // A hundredth of a pixel, and straight lines between nodes of 2 degrees: 0.3 % of 0.5.
        expect(Math.abs(height - level)).toBeLessThan(0.004)
        checkedCount++
      }
    }
    expect(checkedCount).toBeGreaterThan(200)
  })

  it('tells high from low without any colour: dash, weight and shade', () => {
    const lines = paths(drawn(saddle), 'line')
    for (const path of lines) {
      const level = Number(path.part?.slice('line '.length))
      expect(path.dash).toBe(level < 0 ? 'dashed' : 'solid')
      expect(path.strokePx).toBe(level === 0 ? 2.2 : 1)
      expect(path.stroke).toBe('ink')
    }
    expect(lines.some((path) => path.dash === 'dashed')).toBe(true)
    expect(paths(drawn(saddle), 'low')).toHaveLength(1)
  })

  it('writes heights beside their lines, peak and valley in bold', () => {
    const all = texts(drawn(saddle))
    const strong = all.filter((text) => text.isStrong).map((text) => text.text)
    expect(strong).toEqual(['0.50', '-0.50'])
    const labels = all.filter((text) => text.anchor === 'middle' && !text.isStrong)
    expect(labels.length).toBeGreaterThan(6)
    expect(labels.map((text) => text.text)).toContain('0.20')
  })

  it('marks the peak by a full triangle upwards, the valley by a hollow one downwards', () => {
    const [peak] = paths(drawn(saddle), 'peak')
    const [valley] = paths(drawn(saddle), 'valley')
    expect([peak?.fill, valley?.fill]).toEqual(['ink', 'paper'])
    const tip = (path: PathShape | undefined) => {
      const at = coordinates(path?.d ?? '')
      return (at[1] as number) - (at[3] as number)
    }
    expect(tip(peak)).toBeLessThan(0)
    expect(tip(valley)).toBeGreaterThan(0)
    // The saddle is high at 0 degrees: right of the middle, on the rim.
    expect(coordinates(peak?.d ?? '')[0]).toBeCloseTo(180 + 142, 1)
  })

  it('takes one step for two pictures, so that they can be compared', () => {
    const levels = (map: typeof saddle) =>
      paths(drawn(map, 360, 0.3), 'line').map((path) => Number(path.part?.slice(5)))
    expect(new Set(levels(saddle))).toEqual(new Set([-0.3, 0, 0.3]))
    const low = made((r, a) => 0.05 * r * Math.cos(2 * a))
    expect(new Set(levels(low))).toEqual(new Set([0]))
  })

  it('draws a narrow land wider and says how wide', () => {
    expect([drawnRatio(0.9), drawnRatio(0.5)]).toEqual([0.62, 0.5])
    expect(() => drawnRatio(1)).toThrow('radiusRatio')
    const [land] = paths(drawn(made((r) => r, 0.9)), 'land')
    const at = coordinates(land?.d ?? '')
    const lefts = at.filter((_, i) => i % 2 === 0)
    // Left ends of rim and bore: 180 - 142 and 180 - 142 x 0.62.
    expect(lefts).toContain(38)
    expect(lefts).toContain(91.96)
  })

  it.each([240, 360, 700])('stays on its canvas at %i px, a flat face too', (sizePx) => {
    expectOnCanvas(drawn(saddle, sizePx))
    expectOnCanvas(
      drawn(
        made((r) => -2 * r * r, 0.9),
        sizePx,
      ),
    )
    expectOnCanvas(
      drawn(
        made(() => 0),
        sizePx,
      ),
    )
  })

  it('stays small, is the same every time and refuses sizes it can not label', () => {
    expect(JSON.stringify(drawn(saddle)).length).toBeLessThan(40_000)
    expect(drawn(saddle)).toEqual(drawn(saddle))
    expect(() => drawn(saddle, 200)).toThrow('sizePx from 240 to 1200')
  })
})
