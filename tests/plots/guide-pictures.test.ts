import { describe, expect, it } from 'vitest'
import { bandPatterns, gapBands, modelFace } from '../../src/plots/band-surface.ts'
import type { Drawing, PathShape } from '../../src/plots/drawing.ts'
import { guidePicture } from '../../src/plots/guide-picture.ts'
import { guideSaddle, saddleBands } from '../../src/plots/guide-saddle.ts'
import { guideScenes } from '../../src/plots/guide-scenes.ts'
import { ringArea } from '../../src/plots/ring-area.ts'
import { saddleLinePicture } from '../../src/plots/saddle-line-picture.ts'
import { saddleSurfacePicture } from '../../src/plots/saddle-surface-picture.ts'
import { sectionPicture } from '../../src/plots/section-picture.ts'
import { shareBarsPicture } from '../../src/plots/share-bars-picture.ts'
import { saddleLineShare } from '../../src/science/surface/saddle-line-share.ts'
import { coordinates } from './path-points.ts'

const banded = bandPatterns.filter((pattern) => pattern !== 'unreadable')
const pathsOf = (drawing: Drawing) =>
  drawing.shapes.filter((one): one is PathShape => one.kind === 'path')
const part = (drawing: Drawing, name: string) => pathsOf(drawing).find((one) => one.part === name)

const all: readonly (readonly [string, Drawing])[] = [
  ...guideScenes.flatMap((scene) =>
    [0, 1, 2].map((step) => [`${scene} ${step}`, guidePicture(scene, step)] as const),
  ),
  ...banded.flatMap((pattern) =>
    (['up', 'across'] as const).map(
      (along) => [`${pattern} ${along}`, sectionPicture({ pattern, along })] as const,
    ),
  ),
  ['saddle surface', saddleSurfacePicture()],
  ['saddle line', saddleLinePicture()],
  ['share', shareBarsPicture(0.255)],
]

describe('the pictures of the guide', () => {
  it.each(all)('keep %s on its canvas and under 12 kB', (_, drawing) => {
    expect(pathsOf(drawing).length).toBeGreaterThan(1)
    for (const { d } of pathsOf(drawing)) {
      const places = coordinates(d)
      expect(places.length).toBeGreaterThan(0)
      for (const place of places) {
        expect(place).toBeGreaterThanOrEqual(-1e-9)
        expect(place).toBeLessThanOrEqual(Math.max(drawing.widthPx, drawing.heightPx))
      }
    }
    expect(JSON.stringify(drawing).length).toBeLessThan(12_000)
  })

  it('mark the followed band in every step, and say from the second on where it was', () => {
    for (const scene of guideScenes) {
      const steps = [0, 1, 2].map((step) => guidePicture(scene, step))
      for (const step of steps) expect(part(step, 'core')?.fill).toBe('bright')
      expect(part(steps[0]!, 'was here')).toBeUndefined()
      for (const [before, step] of [steps.slice(0, 2), steps.slice(1)]) {
        expect(part(step!, 'was here')?.d).toBe(part(before!, 'followed')?.d)
        expect(part(step!, 'was here')?.dash).toBe('dashed')
        expect(part(step!, 'arrow')).toBeDefined()
      }
    }
  })

  it('refuse a step that there is not', () => {
    expect(() => guidePicture('open-side', 3)).toThrow(RangeError)
    expect(() => shareBarsPicture(1.01)).toThrow('shareBarsPicture requires share from 0 to 1')
    expect(() => ringArea({ sizePx: 20, innerRatio: 0.5 })).toThrow(RangeError)
  })
})

describe('a section of a model face', () => {
  it('takes the face and wedge that the pattern itself is drawn from', () => {
    for (const pattern of banded) {
      const { wedgeBands, heightBands } = modelFace(pattern)
      expect(wedgeBands * 0.6 - heightBands(0.5, 0.6)).toBe(gapBands(pattern, 0.5, 0.6))
    }
  })

  it.each(banded)('strokes each whole number of half wavelengths of %s', (pattern) => {
    // Second route: count the whole numbers that a fine walk over both lands passes.
    let expected = 0
    for (const from of [-1, 0.42]) {
      let before = gapBands(pattern, 0, from)
      for (let i = 1; i <= 5800; i += 1) {
        const gap = gapBands(pattern, 0, from + i / 10_000)
        if (Math.floor(gap) !== Math.floor(before)) expected += 1
        before = gap
      }
    }
    const { shapes } = sectionPicture({ pattern, along: 'up' })
    const strokes = shapes.filter((one) => one.kind === 'line').length
    // One that lies at the very edge may be counted by either route alone.
    expect(Math.abs(strokes - expected)).toBeLessThanOrEqual(1)
  })
})

describe('the saddle of the guide', () => {
  it('is as high as it says, and its line shows the share that the science gives', () => {
    const { innerRatio, heightBands } = guideSaddle
    expect(saddleBands(0, 1) - saddleBands(1, 0)).toBe(heightBands)
    // The line through both rim ends of the middle band: from rim to bore the gap departs by this.
    const shown = Math.abs(saddleBands(1, 0) - saddleBands(innerRatio, 0))
    expect(shown / heightBands).toBeCloseTo(saddleLineShare(innerRatio), 12) // rounding alone
  })

  it('draws its bars to one scale', () => {
    const heights = ['true', 'shown'].map((name) => {
      const places = coordinates(part(shareBarsPicture(0.255), name)?.d ?? '')
      const levels = places.filter((_, index) => index % 2 === 1)
      return Math.max(...levels) - Math.min(...levels)
    })
    expect(heights[1]! / heights[0]!).toBeCloseTo(0.255, 3) // coordinates have two decimals
  })
})
