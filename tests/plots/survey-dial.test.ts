import { describe, expect, it } from 'vitest'
import { surveyDial } from '../../src/plots/survey-dial.ts'
import type { SurveyDialOptions } from '../../src/plots/survey-dial-options.ts'
import { coordinates } from './path-points.ts'
import { pathsOf, textsOf } from './shapes-of.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'

const options: SurveyDialOptions = {
  sizePx: 320,
  surface: 'outside',
  anglesDeg: [0, 45, 90, 135, 180, 225, 270, 315],
  isClockwise: true,
  isIndicatorStanding: false,
  doneIndexes: [0, 1],
  nextIndex: 2,
  isClosed: true,
  texts: { position: (index) => String(index + 1), mark: 'mark' },
}
const tipOf = (of: SurveyDialOptions) => {
  const [left, y, , , right] = coordinates(pathsOf(surveyDial(of).drawing, 'tip')[0]?.d ?? '')
  return { x: ((left ?? 0) + (right ?? 0)) / 2, y: y ?? 0 }
}

describe('surveyDial', () => {
  it('keeps on its canvas for every surface, way of turning and count of positions', () => {
    const counts = [1, 2, 3, 8, 12, 36].map((count) =>
      Array.from({ length: count }, (_, i) => (i * 360) / count),
    )
    for (const surface of ['outside', 'inside', 'face'] as const) {
      for (const anglesDeg of counts) {
        for (const isIndicatorStanding of [true, false]) {
          const of = { ...options, surface, anglesDeg, isIndicatorStanding, nextIndex: 0 }
          expectOnCanvas(surveyDial(of).drawing)
        }
      }
    }
  })

  it('ticks what is done, fills what is next and numbers the rest', () => {
    const { drawing } = surveyDial(options)
    expect(pathsOf(drawing, 'ticked')).toHaveLength(2)
    expect(pathsOf(drawing, 'next')).toHaveLength(1)
    expect(pathsOf(drawing, 'waiting')).toHaveLength(5)
    expect(textsOf(drawing)).toEqual(['mark', '3', '4', '5', '6', '7', '8'])
  })

  it('stands the indicator on the surface at the next position, outside and in a bore', () => {
    // 90 degrees is to the right; half the drawing is 160 px.
    expect(tipOf(options).x).toBeCloseTo(160 + 160 * 0.5, 1)
    expect(tipOf(options).y).toBeCloseTo(160, 1)
    const bore = { ...options, surface: 'inside' } as const
    expect(tipOf(bore).x).toBeCloseTo(160 + 160 * 0.52, 1)
    const caseOf = (of: SurveyDialOptions) =>
      coordinates(pathsOf(surveyDial(of).drawing, 'case')[0]?.d ?? '')[0] as number
    expect(caseOf(options)).toBeGreaterThan(tipOf(options).x)
    expect(caseOf(bore)).toBeLessThan(tipOf(bore).x)
  })

  it('turns the part under a standing indicator, so that the next position lies on top', () => {
    const { places } = surveyDial({ ...options, isIndicatorStanding: true })
    expect(places[2]?.at.x).toBeCloseTo(160, 1)
    expect(places[2]?.at.y).toBeLessThan(160)
    expect(places[0]?.at.x).toBeLessThan(160)
  })

  it('asks for the closing reading at the first position, with a ring round it', () => {
    const all = options.anglesDeg.map((_, index) => index)
    const closing = surveyDial({ ...options, doneIndexes: all, nextIndex: 8 }).drawing
    const next = coordinates(pathsOf(closing, 'next')[0]?.d ?? '')
    expect(next[1]).toBeLessThan(40)
    expect(pathsOf(closing, 'closing')).toHaveLength(1)
    expect(pathsOf(surveyDial({ ...options, isClosed: false }).drawing, 'closing')).toEqual([])
  })

  it('shows no indicator when the turn is done', () => {
    const { drawing } = surveyDial({ ...options, nextIndex: null })
    expect(pathsOf(drawing, 'tip')).toEqual([])
  })

  it('lets no mark touch the next one', () => {
    const anglesDeg = [0, 12, 24, 180]
    const { places } = surveyDial({ ...options, anglesDeg, nextIndex: null })
    const [a, b] = places
    const apart = Math.hypot((b?.at.x ?? 0) - (a?.at.x ?? 0), (b?.at.y ?? 0) - (a?.at.y ?? 0))
    expect(apart).toBeGreaterThan(2 * (a?.radiusPx ?? 0))
  })

  it('refuses a size out of range and a turn without positions', () => {
    expect(() => surveyDial({ ...options, sizePx: 100 })).toThrow(RangeError)
    expect(() => surveyDial({ ...options, anglesDeg: [] })).toThrow(RangeError)
  })
})
