import { describe, expect, it } from 'vitest'
import { formOfMap } from '../../../src/science/surface/form-of-map.ts'
import { madeMap } from './made-map.ts'

const size = { radiusRatio: 0.6, ringCount: 17, angleCount: 180 }
const form = (height: (r: number, a: number) => number, threshold = 0.01) =>
  formOfMap(madeMap(height, size), threshold)

describe('formOfMap', () => {
  it('names the forms by what carries their height', () => {
    expect(form((r) => -r * r)).toBe('convex')
    expect(form((r) => r)).toBe('concave')
    expect(form((r, a) => r * r * Math.cos(2 * a))).toBe('saddle')
    expect(form((_, a) => Math.cos(3 * a))).toBe('twisted')
    expect(form((r) => -((r - 0.8) ** 2))).toBe('edge')
  })

  it('calls a cylinder what is dish and saddle alike: x squared over a broad ring', () => {
    expect(form((r, a) => r * r * Math.cos(a) ** 2)).toBe('cylinder')
  })

  it('is flat below the threshold, whatever it looks like', () => {
    expect(form((r, a) => 0.001 * r * Math.cos(2 * a))).toBe('flat')
    expect(form(() => 0, 0)).toBe('flat')
  })

  it('exchanges convex and concave alone when the map is turned over', () => {
    const pairs = [
      [(r: number) => r * r, 'concave', 'convex'],
      [(r: number, a: number) => r * r * Math.cos(2 * a), 'saddle', 'saddle'],
      [(r: number) => (r - 0.8) ** 2, 'edge', 'edge'],
    ] as const
    for (const [height, up, down] of pairs) {
      expect(form(height)).toBe(up)
      expect(form((r, a) => -height(r, a))).toBe(down)
    }
  })
})
