import { expect, it } from 'vitest'
import { medianStep } from '../../../src/science/traces/median-step.ts'

it('is the middle of the rising steps, whatever falls or repeats', () => {
  expect(medianStep([0, 10, 20, 30])).toBe(10)
  expect(medianStep([0, 10, 10, 20, 5, 12])).toBe(10)
  expect(medianStep([0, 1, 4])).toBe(2)
  expect(medianStep([0, 10, 20, 30, 4000])).toBe(10)
})

it('is none where nothing rises', () => {
  expect(medianStep([])).toBeNull()
  expect(medianStep([5])).toBeNull()
  expect(medianStep([5, 4, 4])).toBeNull()
})
