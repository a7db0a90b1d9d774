import { describe, expect, it } from 'vitest'
import { dialReadingUm } from '../../../src/science/uncertainty/dial-reading-um.ts'

describe('dialReadingUm', () => {
  it.each([
    // Correction factors of lever indicators as printed in the trade's tables: cos of the angle,
    // from memory: 10 degrees 0.98, 20 degrees 0.94, 30 degrees 0.87, 45 degrees 0.71.
    [10, 0.98],
    [20, 0.94],
    [30, 0.87],
    [45, 0.71],
  ])('takes what a lever at %d degrees reads too high: factor %d', (leverAngleDeg, factor) => {
    expect(dialReadingUm({ readingsUm: [100], leverAngleDeg }) / 100).toBeCloseTo(factor, 2)
  })

  it('agrees with the geometry of a lever: tip height by angle', () => {
    // Second route: a lever 15 mm long, turned by 1 urad about 30 degrees, moves its tip by this.
    const at = (rad: number) => 15_000 * Math.sin(rad)
    const turned = at(Math.PI / 6 + 1e-6) - at(Math.PI / 6)
    const shown = 15_000 * 1e-6
    expect(dialReadingUm({ readingsUm: [shown], leverAngleDeg: 30 })).toBeCloseTo(turned, 7)
  })

  it('is the bare mean without an angle', () => {
    expect(dialReadingUm({ readingsUm: [40, 42, 41] })).toBe(41)
    expect(dialReadingUm({ readingsUm: [40], leverAngleDeg: 0 })).toBe(40)
  })

  it.each([{ leverAngleDeg: 61 }, { leverAngleDeg: Number.NaN }, { readingsUm: [] }])(
    'refuses %o',
    (wrong) => {
      expect(() => dialReadingUm({ readingsUm: [40], ...wrong })).toThrow(RangeError)
    },
  )
})
