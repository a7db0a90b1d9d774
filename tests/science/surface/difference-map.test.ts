import { describe, expect, it } from 'vitest'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'
import { differenceMap } from '../../../src/science/surface/difference-map.ts'
import { mapLobes } from '../../../src/science/surface/map-lobes.ts'
import { peakAndValley } from '../../../src/science/surface/peak-and-valley.ts'
import { radialTaper } from '../../../src/science/surface/radial-taper.ts'

const size = { ringCount: 17, angleCount: 72 }
const made = (cone: number, saddle: number) => ({
  radiusRatio: 0.7,
  level: 4,
  coefficients: annularTerms(4).map((t, k) => {
    if (k < 2) return 5
    if (t.radialOrder === 1 && t.angularOrder === 0) return cone
    return t.angularOrder === 2 && t.radialOrder === 0 && !t.isSine ? saddle : 0
  }),
  seenFrom: 0.7,
  seenTo: 1,
})

describe('differenceMap', () => {
  it('shows what lapping took: the saddle is gone, the taper is left', () => {
    const map = differenceMap(made(0.2, 0.5), made(0.2, 0), size)
    expect(mapLobes(map, [2])[0]?.amplitude).toBeCloseTo(0.5, 10) // rounding
    expect(radialTaper(map)).toBeCloseTo(0, 10)
    expect(peakAndValley(map).peakToValley).toBeCloseTo(1, 10)
  })

  it('is 0 for the same surface, also tilted', () => {
    const tilted = made(0.2, 0.5)
    const other = { ...tilted, coefficients: tilted.coefficients.map((v, k) => (k < 2 ? -3 : v)) }
    expect(peakAndValley(differenceMap(tilted, other, size)).peakToValley).toBeLessThan(1e-12)
  })

  it('changes its sign when both change places', () => {
    const [a, b] = [made(0.4, 0.1), made(-0.1, 0.3)]
    const there = differenceMap(a, b, size).heights
    const back = differenceMap(b, a, size).heights
    there.forEach((row, i) => {
      row.forEach((height, j) => {
        expect(back[i]?.[j]).toBeCloseTo(-height, 12) // rounding
      })
    })
  })

  it('refuses two different rings', () => {
    expect(() => differenceMap(made(1, 0), { ...made(1, 0), radiusRatio: 0.75 }, size)).toThrow(
      'radiusRatio',
    )
  })
})
