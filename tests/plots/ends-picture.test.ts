import { describe, expect, it } from 'vitest'
import type { TextShape } from '../../src/plots/drawing.ts'
import { endsPicture } from '../../src/plots/ends-picture.ts'
import { coordinates } from './path-points.ts'
import { pathsOf } from './shapes-of.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'

const texts = { first: '1 first', second: '2 second' }
const strong = (movement: 'along' | 'up', end: 0 | 1) =>
  endsPicture({ widthPx: 320, movement, end, texts })
    .shapes.filter((one): one is TextShape => one.kind === 'text')
    .filter((one) => one.isStrong)
    .map((one) => one.text)

describe('endsPicture', () => {
  it('keeps on its canvas', () => {
    for (const widthPx of [240, 320, 533]) {
      for (const movement of ['along', 'up'] as const) {
        expectOnCanvas(endsPicture({ widthPx, movement, end: 0, texts }))
        expectOnCanvas(endsPicture({ widthPx, movement, end: 1, texts }))
      }
    }
  })

  it('says in bold which end is read now', () => {
    expect(strong('along', 0)).toEqual(['1 first'])
    expect(strong('along', 1)).toEqual(['2 second'])
  })

  it('pushes left first, then right', () => {
    const tip = (end: 0 | 1) =>
      coordinates(
        pathsOf(endsPicture({ widthPx: 320, movement: 'along', end, texts }), 'push head')[0]?.d ??
          '',
      )[0] as number
    expect(tip(0)).toBeLessThan(tip(1))
  })

  it('draws no push on a shaft that is to lie at rest', () => {
    const at = (end: 0 | 1) => endsPicture({ widthPx: 320, movement: 'up', end, texts })
    expect(pathsOf(at(0), 'push head')).toEqual([])
    expect(pathsOf(at(1), 'push head')).toHaveLength(1)
  })

  it('refuses a width out of range', () => {
    expect(() => endsPicture({ widthPx: 100, movement: 'up', end: 0, texts })).toThrow(RangeError)
  })
})
