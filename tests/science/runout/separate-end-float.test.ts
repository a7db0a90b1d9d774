import { expect, it } from 'vitest'
import { fitHarmonics } from '../../../src/science/runout/fit-harmonics.ts'
import { separateEndFloat } from '../../../src/science/runout/separate-end-float.ts'
import { seededUniform } from '../seeded-random.ts'
import { evenAngles, rad } from './even-turn.ts'

it('finds the tilt under a float that moves at will', () => {
  const uniform = seededUniform(3)
  const tilt = (deg: number) => 25 * Math.cos(rad(deg - 70))
  const floats = evenAngles(8).map(() => 100 * uniform())
  const pairs = evenAngles(8).map((angleDeg, i) => ({
    angleDeg,
    firstUm: tilt(angleDeg) + (floats[i] ?? 0),
    secondUm: tilt(angleDeg + 180) + (floats[i] ?? 0),
  }))
  const { face, floatRangeUm } = separateEndFloat(pairs)
  const [first] = fitHarmonics(face, { highestOrder: 1 }).harmonics
  expect(first?.amplitudeUm).toBeCloseTo(25, 10)
  expect(first?.phaseDeg).toBeCloseTo(70, 9)
  expect(floatRangeUm).toBeCloseTo(Math.max(...floats) - Math.min(...floats), 10)
})

it('counts an oval as float, as it says', () => {
  const pairs = evenAngles(8).map((angleDeg) => {
    const oval = 5 * Math.cos(rad(2 * angleDeg))
    return { angleDeg, firstUm: oval, secondUm: oval }
  })
  const { face, floatRangeUm } = separateEndFloat(pairs)
  expect(face.every((one) => Math.abs(one.valueUm) < 1e-12)).toBe(true)
  expect(floatRangeUm).toBeCloseTo(10, 10)
})

it('refuses one pair and a reading that is none', () => {
  const pair = { angleDeg: 0, firstUm: 0, secondUm: 0 }
  expect(() => separateEndFloat([pair])).toThrow('count of pairs')
  expect(() => separateEndFloat([pair, { ...pair, firstUm: Number.NaN }])).toThrow('reading')
})
