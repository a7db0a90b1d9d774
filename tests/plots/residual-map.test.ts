import { describe, expect, it } from 'vitest'
import type { Drawing, PathShape, TextShape } from '../../src/plots/drawing.ts'
import { residualPicture } from '../../src/plots/residual-map.ts'
import { subpaths } from './path-points.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'

const texts = { from: (share: number) => `from ${share}`, unseen: 'not seen' }
const map = {
  ringCount: 1,
  sectorCount: 8,
  from: 0.5,
  to: 1,
  shares: [0.04, 0.05, -0.11, 0.3, null, 0, 0, 0.2],
}
const drawing = residualPicture(map, 300, texts)
const part = (one: Drawing, name: string) =>
  one.shapes.find((shape): shape is PathShape => shape.kind === 'path' && shape.part === name)

/** Of straight outlines, by the formula of Gauss. */
function areaOf(outline: readonly { x: number; y: number }[]): number {
  const sum = outline.reduce((total, a, i) => {
    const b = outline[(i + 1) % outline.length] as { x: number; y: number }
    return total + a.x * b.y - b.x * a.y
  }, 0)
  return Math.abs(sum) / 2
}

describe('residualPicture', () => {
  it('stays in its drawing, the key included', () => {
    expectOnCanvas(drawing)
    expect(drawing.heightPx).toBeGreaterThan(drawing.widthPx)
  })

  it('draws a larger block for a larger residual, of either sign, and none below the least', () => {
    const areas = ['from 0.05', 'from 0.1', 'from 0.2'].map((name) => {
      const blocks = subpaths(part(drawing, name)?.d ?? '')
      return { count: blocks.length, px: areaOf(blocks[0] ?? []) }
    })
    expect(areas.map((one) => one.count)).toEqual([1, 1, 2])
    const [small, middle, large] = areas.map((one) => one.px) as [number, number, number]
    // Sides of 0.34 and 0.64 of a cell, bent a little by the ring.
    expect(small / large).toBeCloseTo(0.34 ** 2, 1)
    expect(middle / large).toBeCloseTo(0.64 ** 2, 1)
  })

  it('puts a cell where the face lies in the photograph: angles rise counter-clockwise', () => {
    const [block] = subpaths(part(drawing, 'from 0.1')?.d ?? '')
    const x = (block ?? []).reduce((sum, p) => sum + p.x, 0) / 4
    const y = (block ?? []).reduce((sum, p) => sum + p.y, 0) / 4
    // Sector 2 of 8 runs from 90 to 135 degrees: left of the middle, in the upper half.
    expect(x).toBeLessThan(150)
    expect(y).toBeLessThan(150)
  })

  it('crosses what was not seen, and says in a key what each block means', () => {
    expect(part(drawing, 'unseen')?.d.match(/M/g)).toHaveLength(2)
    const said = drawing.shapes.filter((one): one is TextShape => one.kind === 'text')
    expect(said.map((one) => one.text)).toEqual(['from 0.05', 'from 0.1', 'from 0.2', 'not seen'])
  })

  it('tells nothing by tone alone: every block is ink', () => {
    const fills = drawing.shapes.flatMap((one) => (one.kind === 'path' ? [one.fill ?? 'ink'] : []))
    expect(new Set(fills)).toEqual(new Set(['ink']))
  })

  it('refuses a size that shows nothing', () => {
    expect(() => residualPicture(map, 100, texts)).toThrow(RangeError)
  })
})
