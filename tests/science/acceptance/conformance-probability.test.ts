import { describe, expect, it } from 'vitest'
import { conformanceProbability } from '../../../src/science/acceptance/conformance-probability.ts'
import type { ConformityInput } from '../../../src/science/acceptance/require-conformity-input.ts'
import { readReference } from '../read-reference.ts'
import { seededNormal, seededUniform } from '../seeded-random.ts'

type Case = ConformityInput & { source: string; probability: number; digits?: number }
const cases = readReference<Case[]>('acceptance/conformance-probability.json')

describe('conformanceProbability', () => {
  it.each(cases)('gives $probability for $value ($source)', ({ probability, digits, ...input }) => {
    const error = Math.abs(conformanceProbability(input) - probability)
    // Four printed digits, else the roundings of two distribution functions.
    expect(error).toBeLessThan(digits === undefined ? 1e-14 * 20 : 0.000051)
  })

  it('agrees with counting seeded draws of what is known, also where it is cut at 0', () => {
    const normal = seededNormal(106)
    const input = { value: 0.05, standardUncertainty: 0.06, upperLimit: 0.15, lowerLimit: 0.02 }
    let kept = 0
    let drawn = 0
    for (let turn = 0; turn < 200_000; turn++) {
      const x = input.value + input.standardUncertainty * normal()
      if (x < 0) continue
      drawn++
      if (x >= input.lowerLimit && x <= input.upperLimit) kept++
    }
    // Four standard deviations of a share of 160 000 draws: 4 x 0.0011.
    const got = conformanceProbability({ ...input, isNonNegative: true })
    expect(Math.abs(kept / drawn - got)).toBeLessThan(0.0044)
  })

  it('falls as the value nears and passes an upper limit, cut or not', () => {
    for (const isNonNegative of [false, true]) {
      let before = 2
      for (let value = 0; value <= 2; value += 0.02) {
        const input = { value, standardUncertainty: 0.1, upperLimit: 1, isNonNegative }
        const pc = conformanceProbability(input)
        // Near 1 neighbours share a double.
        expect(pc <= before).toBe(true)
        if (value > 0.5) expect(pc).toBeLessThan(before)
        before = pc
      }
    }
  })

  it('keeps to its scale, its place and its mirror image', () => {
    const uniform = seededUniform(7)
    for (let turn = 0; turn < 300; turn++) {
      const lowerLimit = uniform() - 0.5
      const upperLimit = lowerLimit + 0.2 + uniform()
      const value = lowerLimit + (uniform() * 1.6 - 0.3) * (upperLimit - lowerLimit)
      const input = { value, standardUncertainty: 0.02 + 0.2 * uniform(), lowerLimit, upperLimit }
      const pc = conformanceProbability(input)
      const moved = (scale: number, shift: number) =>
        conformanceProbability({
          value: value * scale + shift,
          standardUncertainty: input.standardUncertainty * Math.abs(scale),
          lowerLimit: (scale > 0 ? lowerLimit : upperLimit) * scale + shift,
          upperLimit: (scale > 0 ? upperLimit : lowerLimit) * scale + shift,
        })
      // A shift of 3 costs the last digits of the differences, over u.
      for (const [scale, shift] of [
        [1000, 0],
        [1e-6, 0],
        [-1, 0],
        [1, 3],
      ] as const) {
        expect(Math.abs(moved(scale, shift) - pc)).toBeLessThan(1e-13)
      }
    }
  })

  it('keeps the digits of a small probability on either side', () => {
    const far = { value: 10, standardUncertainty: 1, upperLimit: 0 }
    // Phi(-10) in 60 digits; roundings
    expect(conformanceProbability(far) / 7.619853024160525e-24).toBeCloseTo(1, 13)
    const low = { value: -10, standardUncertainty: 1, lowerLimit: 0 }
    expect(conformanceProbability(low)).toBe(conformanceProbability(far))
  })

  it('is yes or no without uncertainty, and a value at the limit keeps it', () => {
    const at = (value: number) =>
      conformanceProbability({ value, standardUncertainty: 0, lowerLimit: 0.3, upperLimit: 0.8814 })
    expect([at(0.2), at(0.1 + 0.2), at(0.5), at((3 * 587.6) / 2000), at(0.8815)]).toEqual([
      0, 1, 1, 1, 0,
    ])
  })

  it('says no to a limit below 0 of what is never below', () => {
    const input = { value: 0.01, standardUncertainty: 0.1, upperLimit: -0.1, isNonNegative: true }
    expect(conformanceProbability(input)).toBe(0)
  })

  it('refuses what can not be held against a limit', () => {
    expect(() => conformanceProbability({ value: 1, standardUncertainty: 0.1 })).toThrow(
      'conformanceProbability requires lowerLimit or upperLimit, got neither',
    )
  })
})
