import { expect, it } from 'vitest'
import { axisOffset } from '../../../src/science/runout/axis-offset.ts'
import { fitHarmonics } from '../../../src/science/runout/fit-harmonics.ts'
import { evenAngles, rad } from './even-turn.ts'

/** Distance from the axis to a circle of radius 60 whose centre is off by e towards phi, at t. */
const distance = (t: number, e: number, phi: number) => {
  const along = e * Math.cos(rad(t - phi))
  const across = e * Math.sin(rad(t - phi))
  return along + Math.sqrt(60_000 ** 2 - across ** 2)
}

it.each(['outside', 'inside'] as const)('finds the axis of a part swept %s', (surface) => {
  const sign = surface === 'outside' ? 1 : -1
  // From outside the needle rises as the surface stands further out; from inside as it comes in.
  const points = evenAngles(12).map((angleDeg) => ({
    angleDeg,
    valueUm: sign * distance(angleDeg, 80, 200),
  }))
  const [first] = fitHarmonics(points, { highestOrder: 1 }).harmonics
  const offset = axisOffset({
    eccentricityUm: first?.amplitudeUm ?? 0,
    directionDeg: first?.phaseDeg ?? 0,
    surface,
  })
  expect(offset.offsetUm).toBeCloseTo(80, 6)
  expect(offset.directionDeg).toBeCloseTo(200, 6)
  expect(offset.moveTowardsDeg).toBeCloseTo(20, 6)
})

it('refuses an eccentricity below 0 and a direction that is none', () => {
  const good = { eccentricityUm: 1, directionDeg: 0, surface: 'outside' } as const
  expect(() => axisOffset({ ...good, eccentricityUm: -1 })).toThrow('eccentricityUm')
  expect(() => axisOffset({ ...good, directionDeg: Number.NaN })).toThrow('directionDeg')
})
