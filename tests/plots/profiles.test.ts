import { describe, expect, it } from 'vitest'
import { circleProfile } from '../../src/plots/circle-profile.ts'
import type { Drawing, PathShape, TextShape } from '../../src/plots/drawing.ts'
import { profileFrame } from '../../src/plots/profile-frame.ts'
import { radiusProfile } from '../../src/plots/radius-profile.ts'
import { madeMap } from '../science/surface/made-map.ts'
import { coordinates } from './path-points.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'

const size = { radiusRatio: 0.8, ringCount: 9, angleCount: 180 }
const map = madeMap((r, a) => 2 * (r - 0.9) + 0.1 * Math.cos(2 * a), size)
const heightText = (um: number) => um.toFixed(2)
const across = (over: { lowUm?: number; highUm?: number } = {}) =>
  radiusProfile({
    map,
    anglesDeg: [0, 90],
    widthPx: 420,
    heightPx: 220,
    heightText,
    radiusText: (mm) => mm.toFixed(2),
    texts: { mean: 'mean', rays: ['at 0', 'at 90'], across: 'radius', unit: 'height' },
    ...over,
  })
const around = () =>
  circleProfile({
    map,
    widthPx: 520,
    heightPx: 220,
    heightText,
    angleText: (deg) => `${deg}°`,
    texts: { outer: 'outer', middle: 'middle', inner: 'inner', across: 'angle', unit: 'height' },
  })
const path = (drawing: Drawing, part: string) =>
  drawing.shapes.find(
    (shape): shape is PathShape => shape.kind === 'path' && shape.part === part,
  ) as PathShape
const texts = (drawing: Drawing) =>
  drawing.shapes.filter((shape): shape is TextShape => shape.kind === 'text')

/** Height per pixel from two labelled heights of the axis. */
function scale(drawing: Drawing) {
  const labels = texts(drawing).filter((one) => one.anchor === 'end' && /^-?\d/.test(one.text))
  const [a, b] = [labels[0] as TextShape, labels.at(-1) as TextShape]
  const perPx = (Number(b.text) - Number(a.text)) / (b.y - a.y)
  return (y: number) => Number(a.text) + (y + 4 - a.y) * perPx
}

describe('radiusProfile', () => {
  it('draws the mean around and the rays at their heights', () => {
    const drawing = across()
    const heightAt = scale(drawing)
    const ends = (part: string) => {
      const at = coordinates(path(drawing, part).d)
      return [heightAt(at[1] as number), heightAt(at.at(-1) as number)]
    }
    // A tenth of a pixel of 160 over 0.6 um.
    for (const [part, low, high] of [
      ['mean', -0.2, 0.2],
      ['at 0', -0.1, 0.3],
      ['at 90', -0.3, 0.1],
    ] as const) {
      expect(ends(part)[0]).toBeCloseTo(low, 2)
      expect(ends(part)[1]).toBeCloseTo(high, 2)
    }
  })

  it('tells the lines apart without colour and names each', () => {
    const drawing = across()
    const looks = ['mean', 'at 0', 'at 90'].map((part) => {
      const { dash, strokePx } = path(drawing, part)
      return `${dash} ${strokePx}`
    })
    expect(new Set(looks).size).toBe(3)
    for (const name of ['mean', 'at 0', 'at 90', 'radius', 'height']) {
      expect(texts(drawing).some((one) => one.text === name)).toBe(true)
    }
  })

  it('lets two pictures share an axis of heights', () => {
    const wide = across({ lowUm: -1, highUm: 1 })
    const at = coordinates(path(wide, 'mean').d)
    const own = coordinates(path(across(), 'mean').d)
    const rise = (values: readonly number[]) => (values[1] as number) - (values.at(-1) as number)
    expect(rise(at)).toBeLessThan(0.5 * rise(own))
  })

  it('refuses five rays and a ray without a text', () => {
    const one = { ...{ map, widthPx: 420, heightPx: 220, heightText, radiusText: heightText } }
    const words = { mean: '', rays: [], across: '', unit: '' }
    expect(() => radiusProfile({ ...one, anglesDeg: [0], texts: words })).toThrow('rays with texts')
  })
})

describe('circleProfile', () => {
  it('draws both edges and the middle, and comes back to where it began', () => {
    const drawing = around()
    const heightAt = scale(drawing)
    for (const [part, mean] of [
      ['outer', 0.2],
      ['middle', 0],
      ['inner', -0.2],
    ] as const) {
      const ys = coordinates(path(drawing, part).d).filter((_, i) => i % 2 === 1)
      expect(ys).toHaveLength(181)
      expect(ys[0]).toBe(ys.at(-1))
      expect(heightAt(Math.min(...ys))).toBeCloseTo(mean + 0.1, 2) // a tenth of a pixel
      expect(heightAt(Math.max(...ys))).toBeCloseTo(mean - 0.1, 2)
    }
    const looks = ['outer', 'middle', 'inner'].map((part) => path(drawing, part).dash)
    expect(looks).toEqual(['solid', 'dotted', 'dashed'])
  })

  it('refuses two circles', () => {
    const two = madeMap(() => 1, { ...size, ringCount: 2 })
    const texts2 = { outer: '', middle: '', inner: '', across: '', unit: '' }
    const options = { map: two, widthPx: 520, heightPx: 220, heightText, angleText: heightText }
    expect(() => circleProfile({ ...options, texts: texts2 })).toThrow('circles from 3')
  })
})

describe('profileFrame', () => {
  it('stays on its canvas, also for a flat line and for many lines that end together', () => {
    expectOnCanvas(across())
    expectOnCanvas(around())
    const flat = {
      points: [
        { at: 0, heightUm: 0 },
        { at: 1, heightUm: 0 },
      ],
      strokePx: 1,
    }
    const drawing = profileFrame({
      widthPx: 280,
      heightPx: 140,
      from: 0,
      to: 1,
      ticks: [{ at: 0, text: '0' }],
      lines: ['a', 'b', 'c', 'd'].map((text) => ({ ...flat, dash: 'solid' as const, text })),
      heightText,
      acrossText: 'x',
      unitText: 'y',
    })
    expectOnCanvas(drawing)
    const ys = ['a', 'b', 'c', 'd'].map(
      (name) => texts(drawing).find((one) => one.text === name)?.y,
    )
    expect(new Set(ys).size).toBe(4)
  })

  it('refuses a frame too small, without lines or without width', () => {
    const frame = {
      heightPx: 220,
      from: 0,
      to: 1,
      ticks: [],
      heightText,
      acrossText: '',
      unitText: '',
    }
    expect(() => profileFrame({ ...frame, widthPx: 200, lines: [] })).toThrow('widthPx from 280')
    expect(() => profileFrame({ ...frame, widthPx: 300, lines: [] })).toThrow('a line')
  })
})
