import { describe, expect, it } from 'vitest'
import { budgetLine } from '../../../src/science/uncertainty/budget-line.ts'
import { expandedResult } from '../../../src/science/uncertainty/expanded-result.ts'

const line = (value: number, degreesOfFreedom?: number) =>
  budgetLine({
    source: 'any',
    value,
    distribution: 'normal',
    sensitivity: 1,
    ...(degreesOfFreedom !== undefined && { degreesOfFreedom }),
  })

describe('expandedResult', () => {
  it('gives u, degrees of freedom and factor of the end gauge of JCGM 100:2008, H.1.6', () => {
    // Contributions in nm with their degrees of freedom: H.1.6 has u = 32 nm and v_eff = 16; it
    // prints t for 99 % there. For 95 % and 16 table G.2 prints 2.12.
    const result = expandedResult([line(25, 18), line(9.7, 25.6), line(2.9, 50), line(16.6, 2)])
    expect(Math.round(result.standardUncertainty)).toBe(32) // printed digits
    expect(Math.floor(result.effectiveDegreesOfFreedom ?? 0)).toBe(16) // cut off as printed
    expect(result.coverageFactor).toBeCloseTo(2.11, 2) // 16.7 and not 16: a hundredth below
    expect(result.expandedUncertainty).toBe(result.coverageFactor * result.standardUncertainty)
  })

  it('gives the factors of table G.2 for a single line: 12.71, 4.30, 2.57, 2.23', () => {
    for (const [degrees, printed] of [
      [1, 12.71],
      [2, 4.3],
      [5, 2.57],
      [10, 2.23],
    ] as const) {
      expect(expandedResult([line(1, degrees)]).coverageFactor).toBeCloseTo(printed, 2) // printed
    }
  })

  it('keeps the usual factor 2 where everything is well known', () => {
    expect(expandedResult([line(3), line(4)])).toEqual({
      standardUncertainty: 5,
      expandedUncertainty: 10,
      coverageFactor: 2,
      effectiveDegreesOfFreedom: null,
    })
  })

  it('is hardly moved by few degrees of freedom of a line that hardly counts', () => {
    const result = expandedResult([line(10), line(1, 1)])
    // (10^2 + 1^2)^2 / (1^4 / 1) = 10201, so far that k stays 2.
    expect(result.effectiveDegreesOfFreedom).toBeCloseTo(10_201, 6) // rounding
    expect(result.coverageFactor).toBe(2)
  })

  it('scales with its lines and keeps factor and degrees of freedom', () => {
    const one = expandedResult([line(3), line(4, 5)])
    const ten = expandedResult([line(30), line(40, 5)])
    expect(ten.expandedUncertainty / one.expandedUncertainty).toBeCloseTo(10, 12) // rounding
    expect(ten.effectiveDegreesOfFreedom).toBeCloseTo(one.effectiveDegreesOfFreedom ?? 0, 9)
  })

  it('gives no uncertainty and no fewer degrees of freedom where nothing contributes', () => {
    expect(expandedResult([line(0, 3)])).toEqual({
      standardUncertainty: 0,
      expandedUncertainty: 0,
      coverageFactor: 2,
      effectiveDegreesOfFreedom: null,
    })
  })

  it('refuses an empty budget', () => {
    expect(() => expandedResult([])).toThrow(RangeError)
  })
})
