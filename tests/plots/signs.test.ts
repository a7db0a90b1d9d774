import { describe, expect, it } from 'vitest'
import { brandMark } from '../../src/plots/brand-mark.ts'
import type { Drawing } from '../../src/plots/drawing.ts'
import { limitBar } from '../../src/plots/limit-bar.ts'
import { boxPath, circlePath, outlinePath } from '../../src/plots/path-data.ts'
import { printTones } from '../../src/plots/print-tones.ts'
import { roundPx } from '../../src/plots/round-px.ts'
import { sealParts, sealSection } from '../../src/plots/seal-section.ts'
import { verdictKinds, verdictShape } from '../../src/plots/verdict-shape.ts'
import { coordinates } from './path-points.ts'

function stayOnCanvas(drawing: Drawing): void {
  let checked = 0
  const side = Math.max(drawing.widthPx, drawing.heightPx)
  for (const shape of drawing.shapes) {
    const values =
      shape.kind === 'path'
        ? coordinates(shape.d)
        : shape.kind === 'line'
          ? [shape.x1, shape.y1, shape.x2, shape.y2]
          : [shape.x, shape.y]
    for (const value of values) {
      expect(value).toBeGreaterThanOrEqual(0)
      expect(value).toBeLessThanOrEqual(side)
      expect(roundPx(value)).toBe(value)
      checked += 1
    }
  }
  expect(checked).toBeGreaterThan(0)
}

/** A drawing without its tones: what is left when every colour has vanished. */
function outlines(drawing: Drawing): string {
  return JSON.stringify(
    drawing.shapes.map((shape) => (shape.kind === 'path' ? [shape.d, shape.dash] : shape.kind)),
  )
}

describe('verdictShape', () => {
  it('gives every verdict an outline of its own, whatever its colour', () => {
    const seen = new Set(verdictKinds.map((verdict) => outlines(verdictShape(verdict, 24))))
    expect(seen.size).toBe(verdictKinds.length)
  })

  it('keeps every sign on its canvas at every size', () => {
    for (const verdict of verdictKinds) {
      for (const size of [12, 20, 24, 31, 400]) stayOnCanvas(verdictShape(verdict, size))
    }
  })

  it('refuses sizes at which signs cannot be told apart', () => {
    expect(() => verdictShape('pass', 8)).toThrow(
      'verdictShape requires sizePx from 12 to 400, got 8',
    )
  })
})

describe('limitBar', () => {
  const texts = { valueText: '0.66', limitText: 'at most 0.88' }
  const pointerOf = (drawing: Drawing) =>
    drawing.shapes.find((shape) => shape.kind === 'path' && shape.strokePx === 2)
  const tipX = (drawing: Drawing): number => {
    const pointer = pointerOf(drawing)
    return pointer?.kind === 'path' ? coordinates(pointer.d)[0]! : Number.NaN
  }
  const postsX = (drawing: Drawing): number[] =>
    drawing.shapes.flatMap((shape) => (shape.kind === 'line' ? [shape.x1] : []))

  it('places value and limit in proportion', () => {
    const bar = limitBar({ value: 0.66, upperLimit: 0.88, widthPx: 300, ...texts })
    const [post = Number.NaN] = postsX(bar)
    // Ends of the bar lie 8 px inside; places are rounded to 0.01 px.
    expect((tipX(bar) - 8) / (post - 8)).toBeCloseTo(0.66 / 0.88, 3)
    stayOnCanvas(bar)
  })

  it('moves the pointer to the right as the value grows', () => {
    const tips = [0.1, 0.4, 0.8, 0.88].map((value) =>
      tipX(limitBar({ value, upperLimit: 0.88, widthPx: 300, ...texts })),
    )
    expect(tips).toEqual([...tips].sort((a, b) => a - b))
    expect(new Set(tips).size).toBe(4)
  })

  it('shows a full pointer within the limits and a hollow one beyond', () => {
    const fill = (value: number, limits: { lowerLimit?: number; upperLimit?: number }) =>
      pointerOf(limitBar({ value, ...limits, widthPx: 200, ...texts }))
    expect(fill(0.88, { upperLimit: 0.88 })).toMatchObject({ fill: 'ink' })
    expect(fill(0.89, { upperLimit: 0.88 })).toMatchObject({ fill: 'paper' })
    expect(fill(4.9, { lowerLimit: 5 })).toMatchObject({ fill: 'paper' })
    expect(fill(5, { lowerLimit: 5, upperLimit: 6 })).toMatchObject({ fill: 'ink' })
  })

  it('draws a post at each limit', () => {
    const both = limitBar({ value: 5, lowerLimit: 2, upperLimit: 8, widthPx: 300, ...texts })
    expect(postsX(both)).toHaveLength(2)
    stayOnCanvas(limitBar({ value: -3, upperLimit: 8, widthPx: 300, ...texts }))
  })

  it('refuses a bar without a limit, without a number or without room', () => {
    expect(() => limitBar({ value: 1, widthPx: 300, ...texts })).toThrow(RangeError)
    expect(() => limitBar({ value: Number.NaN, upperLimit: 1, widthPx: 300, ...texts })).toThrow(
      RangeError,
    )
    expect(() => limitBar({ value: 1, upperLimit: 1, widthPx: 20, ...texts })).toThrow(
      'limitBar requires widthPx from 120 to 1200, got 20',
    )
  })
})

describe('sealSection', () => {
  it('shows the five components, each once and by its name', () => {
    const parts = sealSection({ widthPx: 320 }).shapes.flatMap((shape) =>
      shape.kind === 'path' && shape.part ? [shape.part] : [],
    )
    expect(parts).toEqual([...sealParts])
  })

  it.each(sealParts)('marks %s by a heavier line and no other component', (highlight) => {
    const marked = sealSection({ widthPx: 320, highlight }).shapes.flatMap((shape) =>
      shape.kind === 'path' && shape.part && (shape.strokePx ?? 0) > 3 ? [shape.part] : [],
    )
    expect(marked).toEqual([highlight])
    stayOnCanvas(sealSection({ widthPx: 320, highlight }))
  })

  it('lets the two faces touch along one line', () => {
    const path = (part: string) => {
      const shape = sealSection({ widthPx: 320 }).shapes.find(
        (candidate) => candidate.kind === 'path' && candidate.part === part,
      )
      return shape?.kind === 'path'
        ? coordinates(shape.d).filter((_, index) => index % 2 === 0)
        : []
    }
    expect(Math.max(...path('rotating-face'))).toBe(Math.min(...path('stationary-seat')))
  })
})

describe('brandMark', () => {
  it('is a ring with three bands at every size', () => {
    for (const size of [16, 30, 512]) {
      const mark = brandMark(size)
      stayOnCanvas(mark)
      expect(mark.shapes).toHaveLength(2)
    }
    expect(() => brandMark(4)).toThrow(RangeError)
  })
})

describe('path data', () => {
  it('rounds to two decimals and never writes minus nought', () => {
    expect(
      outlinePath(
        [
          { x: -0.001, y: 1 / 3 },
          { x: 2, y: 3 },
        ],
        false,
      ),
    ).toBe('M0 0.33L2 3')
    expect(Object.is(roundPx(-0.001), 0)).toBe(true)
    expect(() => roundPx(Number.NaN)).toThrow(RangeError)
  })

  it('closes boxes and circles', () => {
    expect(boxPath({ x: 0, y: 0, width: 2, height: 1 })).toBe('M0 0L2 0L2 1L0 1Z')
    expect(circlePath({ x: 5, y: 5 }, 5)).toBe('M0 5A5 5 0 1 1 10 5A5 5 0 1 1 0 5Z')
  })
})

describe('printTones', () => {
  it('falls into clearly different greys on a copy without colour', () => {
    const grey = (hex: string): number => {
      const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) =>
        Number.parseInt(hex.slice(at, at + 2), 16),
      )
      return 0.2126 * r + 0.7152 * g + 0.0722 * b
    }
    expect(grey(printTones.bright) - grey(printTones.half)).toBeGreaterThan(60)
    expect(grey(printTones.half) - grey(printTones.dark)).toBeGreaterThan(60)
    expect(grey(printTones.paper) - grey(printTones.accent)).toBeGreaterThan(120)
  })
})
