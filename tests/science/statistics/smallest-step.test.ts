import { describe, expect, it } from 'vitest'
import { smallestStep } from '../../../src/science/statistics/smallest-step.ts'
import { seededUniform } from '../seeded-random.ts'

describe('smallestStep', () => {
  it('finds the step of a display', () => {
    const uniform = seededUniform(4)
    const shown = Array.from({ length: 200 }, () => Math.round(uniform() * 8) * 0.25)
    expect(smallestStep(shown)).toBe(0.25)
  })

  it('agrees with comparing every pair', () => {
    const uniform = seededUniform(9)
    const values = Array.from({ length: 60 }, () => uniform())
    let least = Number.POSITIVE_INFINITY
    for (const a of values) for (const b of values) if (a > b) least = Math.min(least, a - b)
    expect(smallestStep(values)).toBe(least)
  })

  it('says 0 when no step was seen, and does not reorder what it was given', () => {
    expect(smallestStep([3, 3, 3])).toBe(0)
    expect(smallestStep([])).toBe(0)
    const values = [3, 1, 2]
    smallestStep(values)
    expect(values).toEqual([3, 1, 2])
  })
})
