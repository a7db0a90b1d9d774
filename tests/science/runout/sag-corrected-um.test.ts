import { expect, it } from 'vitest'
import { sagCorrectedUm } from '../../../src/science/runout/sag-corrected-um.ts'
import { evenAngles, rad } from './even-turn.ts'

it('reads true on a mandrel whatever the bracket droops by', () => {
  for (const angleDeg of evenAngles(12)) {
    const droops = (-36 * (1 - Math.cos(rad(angleDeg - 90)))) / 2
    const corrected = sagCorrectedUm({ valueUm: droops, angleDeg, topAngleDeg: 90, sagUm: -36 })
    expect(corrected).toBeCloseTo(0, 10)
  }
})

it('takes all of it away below, half at the sides and nothing on top', () => {
  const of = (angleDeg: number) =>
    sagCorrectedUm({ valueUm: 0, angleDeg, topAngleDeg: 0, sagUm: -20 })
  expect([of(0), of(90), of(180), of(270)].map((one) => Math.round(one * 1e9) / 1e9)).toEqual([
    0, 10, 20, 10,
  ])
})

it.each([
  [{ valueUm: Number.NaN, angleDeg: 0, topAngleDeg: 0, sagUm: 1 }, 'valueUm'],
  [{ valueUm: 0, angleDeg: 0, topAngleDeg: 0, sagUm: 20_000 }, 'sagUm'],
])('refuses %o', (input, name) => {
  expect(() => sagCorrectedUm(input)).toThrow(name)
})
