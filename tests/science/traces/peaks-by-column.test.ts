import { describe, expect, it } from 'vitest'
import { peaksByColumn } from '../../../src/science/traces/peaks-by-column.ts'
import { seededUniform } from '../seeded-random.ts'

describe('what a column of pixels shows', () => {
  it('is the lowest and highest of its readings, by brute force', () => {
    const uniform = seededUniform(14)
    for (let trial = 0; trial < 60; trial++) {
      const times = Array.from({ length: 300 }, () => 100 * uniform()).sort((a, b) => a - b)
      const values = times.map(() => (uniform() < 0.1 ? Number.NaN : uniform()))
      const window = {
        fromS: 100 * uniform() * 0.5,
        toS: 60 + 40 * uniform(),
        columns: 1 + (trial % 40),
      }
      const got = peaksByColumn({ timesS: times, values }, window)
      const width = (window.toS - window.fromS) / window.columns
      for (let column = 0; column < window.columns; column++) {
        const inside = values.filter((value, i) => {
          const place = ((times[i] ?? 0) - window.fromS) / width
          const isLast = column === window.columns - 1 && times[i] === window.toS
          return !Number.isNaN(value) && (isLast || Math.floor(place) === column)
        })
        const shown = got.find((one) => one.column === column)
        if (inside.length === 0) expect(shown).toBeUndefined()
        else {
          expect(shown).toEqual({
            column,
            low: Math.min(...inside),
            high: Math.max(...inside),
            first: inside[0],
            last: inside.at(-1),
          })
        }
      }
    }
  })

  it('loses no peak of a million readings', () => {
    const count = 1_000_000
    const timesS = Float64Array.from({ length: count }, (_, i) => i)
    const values = new Float64Array(count)
    values[123_456] = 7
    values[900_001] = -3
    const got = peaksByColumn({ timesS, values }, { fromS: 0, toS: count, columns: 1200 })
    expect(got).toHaveLength(1200)
    expect(Math.max(...got.map((one) => one.high))).toBe(7)
    expect(Math.min(...got.map((one) => one.low))).toBe(-3)
    expect(got.find((one) => one.high === 7)?.column).toBe(Math.floor((123_456 / count) * 1200))
  })

  it('refuses a window that is none', () => {
    const trace = { timesS: [0, 1], values: [1, 2] }
    expect(() => peaksByColumn(trace, { fromS: 1, toS: 1, columns: 10 })).toThrow('toS')
    expect(() => peaksByColumn(trace, { fromS: 0, toS: 1, columns: 0 })).toThrow('columns')
    expect(() =>
      peaksByColumn({ timesS: [0], values: [] }, { fromS: 0, toS: 1, columns: 1 }),
    ).toThrow('count of values')
  })
})
