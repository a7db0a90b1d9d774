import { describe, expect, it } from 'vitest'
import { timeBase } from '../../../src/science/traces/time-base.ts'
import { readReference } from '../read-reference.ts'
import { seededUniform } from '../seeded-random.ts'

interface Case {
  readonly id: string
  readonly rows: readonly (readonly [number, number])[]
  readonly expect: { readonly sizes: readonly number[]; readonly kinds: readonly string[] }
}
const cases = readReference<Case[]>('traces/time-base-cases.json')
const of = (rows: readonly (readonly [number, number])[]) =>
  timeBase({ timesS: rows.map(([t]) => t), values: rows.map(([, v]) => v) })

describe('the time base of a logger', () => {
  it.each(cases)('is read as it was built: $id', ({ rows, expect: known }) => {
    const got = of(rows)
    expect(got.events.map((one) => one.kind)).toEqual(known.kinds)
    expect(got.segments.map((one) => one.length)).toEqual(known.sizes)
    expect(got.stepS).toBe(10)
    for (const segment of got.segments) {
      const times = segment.map((one) => rows[one]?.[0] ?? Number.NaN)
      expect(times).toEqual([...times].sort((a, b) => a - b))
    }
  })

  it('names a row that stands twice, alike or not', () => {
    const rows = [0, 10, 10, 20, 20, 30].map((t, i) => [t, i === 4 ? 99 : t] as const)
    const got = of(rows)
    expect(got.events).toMatchObject([
      { kind: 'duplicate', index: 2 },
      { kind: 'conflict', index: 4 },
    ])
    expect(got.segments).toEqual([[0, 1, 3, 5]])
  })

  it('can’t tell a gap of an hour from a clock that was set where the value stands still', () => {
    const rows = Array.from({ length: 40 }, (_, i) => [10 * i + (i < 20 ? 0 : 3600), 5] as const)
    expect(of(rows).events.map((one) => one.kind)).toEqual(['jump-unknown'])
  })

  it('gives every row or names it, whatever the order', () => {
    const uniform = seededUniform(6)
    for (let trial = 0; trial < 200; trial++) {
      const rows = Array.from(
        { length: 60 },
        () => [Math.round(uniform() * 50), uniform()] as const,
      )
      const got = of(rows)
      const given = got.segments.flat()
      expect(new Set(given).size).toBe(given.length)
      const unplaced = got.events.filter((one) => ['duplicate', 'conflict'].includes(one.kind))
      expect(given.length + unplaced.length).toBe(60)
    }
  })

  it('takes one row, and refuses none', () => {
    expect(of([[5, 1]])).toEqual({ segments: [[0]], events: [], stepS: null })
    expect(() => of([])).toThrow('count of rows')
    expect(() => of([[Number.NaN, 1]])).toThrow('timesS')
  })
})
