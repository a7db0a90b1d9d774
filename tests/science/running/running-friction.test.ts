import { expect, it } from 'vitest'
import { runningDuty } from '../../../src/science/running/running-duty.ts'
import { runningFriction } from '../../../src/science/running/running-friction.ts'

it('takes the power of the verified value from its torque, and the coefficient back', () => {
  // f 0.07 at 0.4 MPa and 8.3409 m/s on 50 to 58 mm: 158.48 W.
  const { faceLoadN, slidingSpeedMPerS } = runningDuty({
    outerDiameterMm: 58,
    innerDiameterMm: 50,
    speedPerMin: 2950,
    differenceMPa: 1,
    balanceRatio: 0.75,
    springPressureMPa: 0.15,
  })
  const torqueNm = 0.07 * faceLoadN * 0.027
  const got = runningFriction({ torqueNm, speedPerMin: 2950, faceLoadN, meanDiameterMm: 54 })
  expect(got.powerW).toBeCloseTo(158.4800390738503 * (slidingSpeedMPerS / 8.3409), 6)
  expect(got.frictionCoefficient).toBeCloseTo(0.07, 12)
})

it('has no coefficient where nothing presses, and is kW of the rule of the trade', () => {
  const free = { torqueNm: 2, speedPerMin: 1, faceLoadN: 0, meanDiameterMm: 54 }
  expect(runningFriction(free).frictionCoefficient).toBeNull()
  // kW = N m x r/min / 9550, printed to four digits.
  const { powerW } = runningFriction({ ...free, torqueNm: 95.5, speedPerMin: 100 })
  expect(powerW / 1000).toBeCloseTo(1, 3)
})

it('refuses what no rig shows', () => {
  const at = { torqueNm: 1, speedPerMin: 1, faceLoadN: 1, meanDiameterMm: 54 }
  expect(() => runningFriction({ ...at, torqueNm: -1 })).toThrow('torqueNm')
  expect(() => runningFriction({ ...at, meanDiameterMm: 0 })).toThrow('meanDiameterMm')
})
