import { describe, expect, it } from 'vitest'
import { planStaticTest } from '../../src/domain/plan-static-test.ts'
import { buildInstrument } from '../support/build-instrument.ts'

const gauge = buildInstrument('pressure-gauge', {
  id: 1,
  unit: 'kPa',
  resolutionStep: 0.1,
  rangeFrom: 0,
  rangeTo: 1000,
})
const figures = {
  startPressureKPaAbs: 271.325,
  endPressureKPaAbs: 271.325,
  startTemperatureC: 20,
  endTemperatureC: 20,
  referenceTemperatureC: 20,
  barometerKPa: 101.325,
  durationS: 600,
  volumeL: 28,
  expansion: null,
}
const plan = (
  changes: { limitPaM3PerS?: number | null; isTimed?: boolean; volumeL?: number } = {},
) => {
  const { limitPaM3PerS = null, isTimed = true, volumeL = 28 } = changes
  return planStaticTest(
    { ...figures, volumeL },
    {
      setUp: {
        gaugeInstrumentId: 1,
        thermometerInstrumentId: null,
        volumeInstrumentId: null,
        volumeL,
        startedAt: '2026-11-25T10:00:00.000Z',
        budgetInput: null,
      },
      instruments: [gauge],
      limitPaM3PerS,
      isTimed,
    },
  )
}

describe('a static test before the gas is let in', () => {
  it('stores the energy of the worked example', () => {
    expect(plan().energy.energyJ).toBeCloseTo(4659, 0) // E24
    expect(plan({ isTimed: false })).toMatchObject({
      smallestSeenPaM3PerS: null,
      neededHoldS: null,
    })
  })

  it('sees no less than two readings of its gauge can tell', () => {
    // V sqrt 2 (d / sqrt 12) / t, 3.29 times, from the formulas of leak tests: d 100 Pa.
    const closed = (3.29 * 0.028 * Math.SQRT2 * (100 / Math.sqrt(12))) / 600
    expect((plan().smallestSeenPaM3PerS ?? 0) / closed).toBeCloseTo(1, 6)
    const half = plan({ volumeL: 14 }).smallestSeenPaM3PerS ?? 0
    expect(half / closed).toBeCloseTo(0.5, 6)
  })

  it('tells how long a hold the limit needs, and nothing where it is seen', () => {
    const seen = plan().smallestSeenPaM3PerS ?? 0
    expect(plan({ limitPaM3PerS: seen / 4 }).neededHoldS).toBeCloseTo(2400, 6)
    expect(plan({ limitPaM3PerS: seen * 1.01 }).neededHoldS).toBeNull()
    expect(plan().neededHoldS).toBeNull()
  })
})
