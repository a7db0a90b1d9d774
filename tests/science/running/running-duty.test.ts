import { describe, expect, it } from 'vitest'
import { type RunningFace, runningDuty } from '../../../src/science/running/running-duty.ts'
import { runningFriction } from '../../../src/science/running/running-friction.ts'
import { exactFactors } from '../../../src/science/units/exact-factors.ts'

/** The verified values of speed and pressure: 50 to 58 mm, 2950 a minute, 1 MPa, B 0.75, 0.15 MPa. */
const face: RunningFace = {
  outerDiameterMm: 58,
  innerDiameterMm: 50,
  speedPerMin: 2950,
  differenceMPa: 1,
  balanceRatio: 0.75,
  springPressureMPa: 0.15,
}

describe('the duty of running faces', () => {
  it('is that of the verified values', () => {
    const duty = runningDuty(face)
    expect(duty.slidingSpeedMPerS).toBeCloseTo(8.3409284952809, 10)
    expect(duty.facePressureMPa).toBeCloseTo(0.4, 12)
    // Without a film all of it closes: 0.9 MPa.
    expect(runningDuty({ ...face, pressureFactor: 0 }).facePressureMPa).toBeCloseTo(0.9, 12)
    expect(duty.pressureVelocityMPaMPerS).toBeCloseTo(0.4 * 8.3409284952809, 10)
  })

  it('gives 100 000 psi ft/min as 35.03 bar m/s', () => {
    // E25 of the facts: printed 35.03, computed 35.025.
    const psiFtPerMin = (exactFactors.psi.value * 12 * exactFactors.inch.value) / 60
    const barMPerS = (100_000 * psiFtPerMin) / exactFactors.bar.value
    expect(barMPerS).toBeCloseTo(35.025, 3)
  })

  it('takes the power of the verified value from its torque, and the coefficient back', () => {
    // f 0.07 at 0.4 MPa and 8.3409 m/s on 50 to 58 mm: 158.48 W.
    const { faceLoadN, slidingSpeedMPerS } = runningDuty(face)
    const torqueNm = 0.07 * faceLoadN * 0.027
    const got = runningFriction({ torqueNm, speedPerMin: 2950, faceLoadN, meanDiameterMm: 54 })
    expect(got.powerW).toBeCloseTo(158.4800390738503 * (slidingSpeedMPerS / 8.3409), 6)
    expect(got.frictionCoefficient).toBeCloseTo(0.07, 12)
    expect(
      runningFriction({ torqueNm, speedPerMin: 1, faceLoadN: 0, meanDiameterMm: 54 }),
    ).toMatchObject({ frictionCoefficient: null })
  })

  it.each([
    [{ innerDiameterMm: 58 }, 'innerDiameterMm'],
    [{ speedPerMin: -1 }, 'speedPerMin'],
    [{ balanceRatio: 4 }, 'balanceRatio'],
    [{ pressureFactor: 2 }, 'pressureFactor'],
  ])('refuses %j', (change, field) => {
    expect(() => runningDuty({ ...face, ...change })).toThrow(field)
  })
})
