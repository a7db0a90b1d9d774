import { describe, expect, it } from 'vitest'
import { edgeProfiles } from '../../../src/science/photo/edge-profiles.ts'

/** Light that is the distance from the middle, so that a profile names its own place. */
const size = 201
const cone = {
  light: Float32Array.from({ length: size * size }, (_, i) =>
    Math.hypot((i % size) - 100, Math.floor(i / size) - 100),
  ),
  width: size,
  height: size,
}
const circle = { cx: 100, cy: 100, rx: 60, ry: 60, rotationDeg: 0 }

describe('edgeProfiles', () => {
  it.each(['outer', 'inner'] as const)('reads from the land outwards at the %s edge', (side) => {
    const found = edgeProfiles(cone, circle, { side, landwards: 0.1, outwards: 0.05 })
    expect(found.offsetCount).toBe(12 + 6 + 1) // half pixels: 6 px and 3 px
    const sign = side === 'outer' ? 1 : -1
    for (const row of [0, 61, 133]) {
      for (let i = 0; i < found.offsetCount; i++) {
        const r = 60 * (1 + sign * (found.first + i * found.step))
        // Between four pixels a cone is off by at most 1 / (8 r).
        expect(Math.abs((found.light[row * found.offsetCount + i] ?? 0) - r)).toBeLessThan(0.01)
      }
    }
  })
})
