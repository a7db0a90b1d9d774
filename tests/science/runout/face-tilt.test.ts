import { expect, it } from 'vitest'
import { faceTilt } from '../../../src/science/runout/face-tilt.ts'
import { readReference } from '../read-reference.ts'

const { checks } = readReference<{
  checks: readonly {
    fn: string
    input: { amp1: number; radius: number; D: number }
    expect: { fim: number; tilt: number; perp: number }
  }[]
}>('runout/checks.json')

it('gives the tilt of 0.08 mm on 140 mm and its movement at the seal, as the facts print it', () => {
  const { tiltMrad, tiltDeg, mmPerM, movementAtSealUm } = faceTilt({
    amplitudeUm: 40,
    sweptDiameterMm: 140,
    sealMeanDiameterMm: 55,
  })
  expect(tiltMrad).toBeCloseTo(0.5714, 4) // E15, printed to four digits
  expect(tiltDeg).toBeCloseTo(0.03274, 5)
  expect(tiltDeg * 60).toBeCloseTo(1.964, 3)
  expect(mmPerM).toBeCloseTo(0.5714, 4)
  expect(movementAtSealUm).toBeCloseTo(31.43, 2) // 0.08 x 55 / 140 mm
})

it('gives the tilt of the check by definition', () => {
  const [check] = checks.filter((one) => one.fn === 'faceTilt')
  const { amp1, radius, D } = check?.input ?? { amp1: 0, radius: 0, D: 0 }
  const tilt = faceTilt({
    amplitudeUm: amp1 * 1e6,
    sweptDiameterMm: 2000 * radius,
    sealMeanDiameterMm: 1000 * D,
  })
  // Small angle: atan and the angle differ by 2e-8 of it.
  expect(tilt.tiltMrad / 1000).toBeCloseTo(check?.expect.tilt ?? 0, 10)
  expect(tilt.movementAtSealUm).toBeCloseTo((check?.expect.perp ?? 0) * 1e6, 9)
})

it('has no movement where the seal is not known, and none without tilt', () => {
  expect(faceTilt({ amplitudeUm: 5, sweptDiameterMm: 100 }).movementAtSealUm).toBeNull()
  const flat = faceTilt({ amplitudeUm: 0, sweptDiameterMm: 100, sealMeanDiameterMm: 50 })
  expect(flat).toEqual({ tiltMrad: 0, tiltDeg: 0, mmPerM: 0, movementAtSealUm: 0 })
})

it.each([
  [() => faceTilt({ amplitudeUm: 1, sweptDiameterMm: 0 }), 'sweptDiameterMm'],
  [() => faceTilt({ amplitudeUm: -1, sweptDiameterMm: 100 }), 'amplitudeUm'],
  [
    () => faceTilt({ amplitudeUm: 1, sweptDiameterMm: 100, sealMeanDiameterMm: -1 }),
    'sealMeanDiameterMm',
  ],
])('%s is refused with the name of what is wrong', (call, name) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(name)
})
