import { describe, expect, it } from 'vitest'
import {
  type WornTrackPictureOptions,
  wornTrackPicture,
} from '../../src/plots/worn-track-picture.ts'
import { subpaths } from './path-points.ts'
import { pathsOf, textsOf } from './shapes-of.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'

const options: WornTrackPictureOptions = {
  widthPx: 340,
  noseWidthMm: 4,
  trackWidthMm: 5,
  faceWidthMm: 8,
  movementUm: 1000,
  found: { leastUm: 500, mostUm: 800 },
  texts: {
    nose: 'nose',
    track: 'track',
    noseSwings: 'swings',
    movement: 'wider',
    found: 'found',
  },
}
const span = (of: WornTrackPictureOptions, part: string) => {
  const xs = (subpaths(pathsOf(wornTrackPicture(of), part)[0]?.d ?? '')[0] ?? []).map((p) => p.x)
  return { left: Math.min(...xs), right: Math.max(...xs) }
}
const wide = (of: WornTrackPictureOptions, part: string) =>
  span(of, part).right - span(of, part).left

describe('wornTrackPicture', () => {
  it('keeps on its canvas, also for a track that is narrower than the nose', () => {
    for (const widthPx of [300, 340, 700]) {
      expectOnCanvas(wornTrackPicture({ ...options, widthPx }))
      const narrow = { trackWidthMm: 3, movementUm: -1000, faceWidthMm: null, found: null }
      expectOnCanvas(wornTrackPicture({ ...options, widthPx, ...narrow }))
    }
  })

  it('draws nose, track and face in one scale', () => {
    // Rounded to a hundredth of a pixel.
    expect(wide(options, 'track') / wide(options, 'nose')).toBeCloseTo(5 / 4, 3)
    expect(wide(options, 'face') / wide(options, 'nose')).toBeCloseTo(2, 3)
  })

  it('swings the nose from one edge of the track to the other', () => {
    expect(span(options, 'nose').left).toBeCloseTo(span(options, 'track').left, 1)
    const other = span(options, 'nose at the other side')
    expect(other.right).toBeCloseTo(span(options, 'track').right, 1)
  })

  it('compares track and found movement on one scale', () => {
    expect(wide(options, 'found') / wide(options, 'movement')).toBeCloseTo(0.5, 3)
    expect(wide(options, 'found at most') / wide(options, 'movement')).toBeCloseTo(0.8, 3)
  })

  it('draws no bar for what nobody surveyed, and no swing where there is none', () => {
    const drawing = wornTrackPicture({ ...options, found: null, trackWidthMm: 4, movementUm: 0 })
    expect(pathsOf(drawing, 'found')).toEqual([])
    expect(textsOf(drawing)).not.toContain('swings')
  })

  it('refuses a width of the drawing out of range, and widths that are none', () => {
    expect(() => wornTrackPicture({ ...options, widthPx: 100 })).toThrow(RangeError)
    expect(() => wornTrackPicture({ ...options, noseWidthMm: 0 })).toThrow(RangeError)
  })
})
