import { describe, expect, it } from 'vitest'
import type { Drawing, TextShape } from '../../src/plots/drawing.ts'
import { wholeFaceDrawings } from '../../src/plots/whole-face-drawings.ts'
import { wholeFaceTexts } from '../../views/words/en/whole-face-texts.ts'
import { madeMap } from '../science/surface/made-map.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'

const size = { radiusRatio: 0.8, ringCount: 17, angleCount: 180 }
const saddle = (halfUm: number) => madeMap((_, a) => halfUm * Math.cos(2 * a), size)
const numbersOf = (drawing: Drawing) =>
  drawing.shapes
    .filter((one): one is TextShape => one.kind === 'text')
    .map((one) => one.text)
    .filter((text) => /^−?\d\.\d+$/.test(text))

describe('wholeFaceDrawings', () => {
  it('keeps every drawing on its canvas', () => {
    for (const drawing of Object.values(wholeFaceDrawings(saddle(0.2), wholeFaceTexts))) {
      expectOnCanvas(drawing)
    }
  })

  it('gives heights as many decimals as their steps have: 0.015 never reads 0.02', () => {
    const { map, around } = wholeFaceDrawings(saddle(0.02), wholeFaceTexts)
    expect(numbersOf(map)).toContain('−0.015')
    const all = [...numbersOf(map), ...numbersOf(around)]
    expect(new Set(all.map((text) => text.split('.')[1]?.length))).toEqual(new Set([3]))
    expect(numbersOf(wholeFaceDrawings(saddle(0.2), wholeFaceTexts).map)).toContain('0.15')
  })

  it('draws with the decimals of a scale that faces share', () => {
    const scale = { lowUm: -0.2, highUm: 0.2, stepUm: 0.05 }
    expect(numbersOf(wholeFaceDrawings(saddle(0.02), wholeFaceTexts, scale).map)).toContain('0.00')
  })

  it('draws a face without any height', () => {
    const flat = madeMap(() => 0, size)
    expect(() => wholeFaceDrawings(flat, wholeFaceTexts)).not.toThrow()
  })
})
