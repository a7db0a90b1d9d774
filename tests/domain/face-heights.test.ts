import { expect, test } from 'vitest'
import { faceHeights } from '../../src/domain/face-heights.ts'
import { buildMeasuredValue } from '../support/build-measured-value.ts'
import { buildComponent, buildSeal } from '../support/build-seal.ts'

const height = (id: number, valueUm: number, changes = {}) =>
  buildMeasuredValue({ id, characteristic: 'face-height', componentId: 11, valueUm, ...changes })
const seal = buildSeal({
  components: [
    buildComponent({ minimumNoseHeightMm: 1.5 }),
    buildComponent({ id: 12, kind: 'stationary-seat' }),
  ],
})

test('a face height stands with what is left of it, found and left, newest each', () => {
  const measuredValues = [
    height(1, 2000, { condition: 'as-found', replacedById: 2 }),
    height(2, 2010, { condition: 'as-found' }),
    height(3, 1490),
    height(4, 5000, { componentId: 12 }),
    buildMeasuredValue({ id: 5 }),
  ]
  const told = faceHeights({ measuredValues, seal })
  expect(told.map((one) => [one.face, one.condition, one.mm, one.minimumMm])).toEqual([
    ['rotating-face', 'as-found', 2.01, 1.5],
    ['rotating-face', 'as-left', 1.49, 1.5],
    ['stationary-seat', 'as-left', 5, null],
  ])
  expect(told[0]?.marginMm).toBeCloseTo(0.51, 9) // doubles alone
  expect(told[1]?.marginMm).toBeCloseTo(-0.01, 9)
  expect(told[2]?.marginMm).toBe(null)
})

test('nothing is told of faces that nobody measured', () => {
  expect(faceHeights({ measuredValues: [], seal })).toEqual([])
})
