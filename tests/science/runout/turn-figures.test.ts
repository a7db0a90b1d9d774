import { expect, it } from 'vitest'
import { turnFigures } from '../../../src/science/runout/turn-figures.ts'
import { eightPositions, evenAngles, evenTurn, rad } from './even-turn.ts'

it('says all of the worked example', () => {
  const figures = turnFigures(eightPositions, 2)
  expect(figures.totalUm).toBe(40) // E13
  expect(figures.fittedRunOutUm).toBeCloseTo(42.59, 2)
  expect(figures.eccentricityDirectionDeg).toBeCloseTo(169.81, 2)
  expect(figures.roundnessLeastSquaresUm).toBeCloseTo(1.92, 3)
  expect(figures.couldBeMissedUm).toBeCloseTo(42.592 * (1 - Math.cos(Math.PI / 8)), 3)
  expect(figures.eccentricityStandardUncertaintyUm).toBeCloseTo(1, 12) // 2 sqrt(2 / 8)
  expect(figures.roundnessStandardUncertaintyUm).toBeCloseTo(2 * Math.SQRT2, 12)
  expect(figures.harmonics.map((one) => one.order)).toEqual([1, 2, 3])
})

it('gives no direction to nothing, nor to less than twice the uncertainty', () => {
  expect(turnFigures(evenTurn([5, 5, 5, 5])).eccentricityDirectionDeg).toBeNull()
  const small = evenTurn(evenAngles(8).map((deg) => Math.cos(rad(deg))))
  expect(turnFigures(small, 0.9).eccentricityDirectionDeg).toBeCloseTo(0, 9)
  expect(turnFigures(small, 1.1).eccentricityDirectionDeg).toBeNull() // u(e) = 0.55
})

it('refuses two positions', () => {
  expect(() => turnFigures(eightPositions.slice(0, 2))).toThrow('count of positions')
})

it('has figures for readings that are all alike, whatever rounding leaves of them', () => {
  const alike = [12.7, 0.1, 25.4, 0.3, 1e6 / 3, -0.0005 * 25_400, 5]
  for (const value of alike) {
    for (const count of [3, 5, 8, 12, 36]) {
      const figures = turnFigures(evenTurn(Array.from({ length: count }, () => value)))
      expect(figures.totalUm).toBe(0)
      expect(figures.roundnessMinimumZoneUm).toBe(0)
      expect(figures.eccentricityUm).toBeLessThan(1e-9)
    }
  }
})

it('gives no direction to what bunched positions make of a lobe', () => {
  const values = [0, 1, 0, 2, 1, 3, 5, 4]
  const bunched = turnFigures(values.map((valueUm, angleDeg) => ({ angleDeg, valueUm })))
  expect(bunched.areBunched).toBe(true)
  expect(bunched.eccentricityUm).toBeGreaterThan(100)
  expect(bunched.eccentricityDirectionDeg).toBeNull()
  expect(turnFigures(eightPositions).areBunched).toBe(false)
})
