import { describe, expect, it } from 'vitest'
import { arrowShapes } from '../../src/plots/arrow-shapes.ts'
import { checkMark } from '../../src/plots/check-mark.ts'
import { clockPlace } from '../../src/plots/clock-place.ts'
import { roundLength } from '../../src/plots/round-length.ts'
import { coordinates } from './path-points.ts'

describe('clockPlace', () => {
  it('lays 0 on top and angles the way that is asked', () => {
    const centre = { x: 50, y: 50 }
    expect(clockPlace(centre, true)(0, 40)).toEqual({ x: 50, y: 10 })
    expect(clockPlace(centre, true)(90, 40)).toEqual({ x: 90, y: 50 })
    expect(clockPlace(centre, false)(90, 40)).toEqual({ x: 10, y: 50 })
    expect(clockPlace(centre, true)(450, 40)).toEqual({ x: 90, y: 50 })
  })
})

describe('arrowShapes', () => {
  const style = { tone: 'ink', strokePx: 2, headPx: 10, part: 'way' } as const
  it('ends with its tip where it leads', () => {
    const shapes = arrowShapes({ x: 0, y: 0 }, { x: 30, y: 40 }, style)
    const head = shapes.at(-1)
    expect(shapes).toHaveLength(3)
    expect(head?.kind === 'path' && coordinates(head.d).slice(0, 2)).toEqual([30, 40])
  })

  it('is its head alone where it is shorter than that, and nothing without a length', () => {
    expect(arrowShapes({ x: 0, y: 0 }, { x: 6, y: 0 }, style)).toHaveLength(1)
    expect(arrowShapes({ x: 5, y: 5 }, { x: 5, y: 5 }, style)).toEqual([])
  })
})

describe('checkMark', () => {
  it('is as wide as asked', () => {
    expect(checkMark({ x: 10, y: 10 }, 10)).toBe('M5 10L8.5 13.5L15 6.5')
  })
})

describe('roundLength', () => {
  it.each([
    [37, 20],
    [50, 50],
    [9.99, 5],
    [0.031, 0.02],
    [1, 1],
  ])('gives the largest round length within %d: %d', (most, length) => {
    expect(roundLength(most)).toBe(length)
  })

  it('refuses what holds no length', () => {
    for (const most of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => roundLength(most)).toThrow(RangeError)
    }
  })
})
