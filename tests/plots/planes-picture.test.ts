import { describe, expect, it } from 'vitest'
import type { LineShape } from '../../src/plots/drawing.ts'
import { type PlanesPictureOptions, planesPicture } from '../../src/plots/planes-picture.ts'
import { pathsOf, textsOf } from './shapes-of.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'

const options: PlanesPictureOptions = {
  widthPx: 320,
  place: 'vee-blocks',
  planesMm: [0, 100, 400],
  doneIndexes: [0],
  nextIndex: 1,
  texts: { plane: (index) => String(index + 1), positionMm: (mm) => `${mm} mm` },
}

describe('planesPicture', () => {
  it('keeps on its canvas in every support', () => {
    for (const place of ['machine', 'between-centres', 'vee-blocks'] as const) {
      for (const widthPx of [280, 320, 900]) {
        expectOnCanvas(planesPicture({ ...options, place, widthPx }))
      }
    }
  })

  it('lays planes in proportion to where they are', () => {
    const xs = planesPicture(options)
      .shapes.filter((one): one is LineShape => one.kind === 'line')
      .map((one) => one.x1)
    const [first = 0, second = 0, third = 0] = xs
    // Rounded to a hundredth of a pixel.
    expect((second - first) / (third - first)).toBeCloseTo(0.25, 3)
  })

  it('ticks the planes done and stands the indicator on the one to sweep', () => {
    const drawing = planesPicture(options)
    expect(pathsOf(drawing, 'ticked')).toHaveLength(1)
    expect(pathsOf(drawing, 'tip')).toHaveLength(1)
    expect(textsOf(drawing)).toEqual(['0 mm', '2', '100 mm', '3', '400 mm'])
    expect(pathsOf(planesPicture({ ...options, nextIndex: null }), 'tip')).toEqual([])
  })

  it('draws one plane alone in the middle', () => {
    const [line] = planesPicture({ ...options, planesMm: [70], nextIndex: 0 }).shapes.filter(
      (one): one is LineShape => one.kind === 'line',
    )
    expect(line?.x1).toBe(160)
  })

  it('refuses a width out of range and a shaft without planes', () => {
    expect(() => planesPicture({ ...options, widthPx: 100 })).toThrow(RangeError)
    expect(() => planesPicture({ ...options, planesMm: [] })).toThrow(RangeError)
  })
})
