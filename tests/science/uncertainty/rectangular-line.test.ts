import { describe, expect, it } from 'vitest'
import { rectangularLine } from '../../../src/science/uncertainty/rectangular-line.ts'

describe('rectangularLine', () => {
  it('gives 2.3 C for a temperature from 96 to 104 C, JCGM 100:2008, 4.4.5', () => {
    const line = rectangularLine({ source: 'temperature', halfWidth: 4, sensitivity: 1 })
    expect(line.value).toBeCloseTo(2.3, 1) // printed digits
    expect(line.value).toBeCloseTo(2.3094, 4) // 4 / sqrt 3 by hand
    expect(line).toMatchObject({ distribution: 'rectangular', degreesOfFreedom: null })
  })

  it('agrees with the exact variance of a fine grid between the limits', () => {
    let squares = 0
    const steps = 10_000
    for (let i = 0; i < steps; i++) squares += ((((i + 0.5) / steps) * 2 - 1) * 0.05) ** 2
    const { contribution } = rectangularLine({ source: 'x', halfWidth: 0.05, sensitivity: -3 })
    // Midpoint rule: relative error 1 / steps^2.
    expect(contribution).toBeCloseTo(3 * Math.sqrt(squares / steps), 9)
  })

  it.each([{ halfWidth: -1 }, { halfWidth: Number.NaN }, { sensitivity: Number.NaN }])(
    'refuses %o',
    (wrong) => {
      expect(() =>
        rectangularLine({ source: 'x', halfWidth: 1, sensitivity: 1, ...wrong }),
      ).toThrow(RangeError)
    },
  )
})
