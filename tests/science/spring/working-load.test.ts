import { expect, it } from 'vitest'
import { workingLoad } from '../../../src/science/spring/working-load.ts'

const springs = {
  springsCount: 6,
  rateNPerMm: 3,
  freeLengthMm: 20,
  workingLengthMm: 14,
  solidLengthMm: 11,
  faceOuterDiameterMm: 61.6,
  faceInnerDiameterMm: 48.9,
} as const

it('gives load, pressure on the face and travel by hand', () => {
  const { loadN, facePressureMPa, remainingTravelMm, loadPerMmN } = workingLoad(springs)
  expect(loadN).toBe(108)
  // 108 N on 1102.2 mm2
  expect(facePressureMPa).toBeCloseTo(108 / (Math.PI * (30.8 ** 2 - 24.45 ** 2)), 12)
  expect(facePressureMPa).toBeCloseTo(0.098, 3)
  expect(remainingTravelMm).toBe(3)
  expect(loadPerMmN).toBe(18)
})

it('changes by the rate for each mm that the seat is fitted deeper or lapped off', () => {
  const shorter = workingLoad({ ...springs, workingLengthMm: 13.75 })
  expect(shorter.loadN - workingLoad(springs).loadN).toBeCloseTo(0.25 * 18, 12)
})

it('presses nothing at its free length, and says nothing that it does not know', () => {
  const free = workingLoad({
    springsCount: 1,
    rateNPerMm: 3,
    freeLengthMm: 20,
    workingLengthMm: 20,
  })
  expect(free).toEqual({
    loadN: 0,
    facePressureMPa: null,
    remainingTravelMm: null,
    loadPerMmN: 3,
  })
})

it.each([
  [{ workingLengthMm: 21 }, 'workingLengthMm'],
  [{ workingLengthMm: 10 }, 'workingLengthMm'],
  [{ springsCount: 1.5 }, 'springsCount'],
  [{ rateNPerMm: 0 }, 'rateNPerMm'],
  [{ faceInnerDiameterMm: 61.6 }, 'faceInnerDiameterMm'],
])('refuses %o', (change, name) => {
  expect(() => workingLoad({ ...springs, ...change })).toThrow(RangeError)
  expect(() => workingLoad({ ...springs, ...change })).toThrow(name)
})
