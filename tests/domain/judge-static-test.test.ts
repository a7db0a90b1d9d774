import { describe, expect, test } from 'vitest'
import { judgeStaticTest } from '../../src/domain/judge-static-test.ts'
import type { Limit } from '../../src/domain/limit-set.ts'
import { buildJudgeContext } from '../support/build-judge-context.ts'
import { buildLimit, buildLimitSet } from '../support/build-limit-set.ts'
import { buildStaticTest } from '../support/build-static-test.ts'
import { buildUncertainty } from '../support/build-uncertainty.ts'

// 14 kPa within 300 s from at most 28 L.
const dropLimits = buildJudgeContext()
const leakLimit: Limit = buildLimit({ id: 7, characteristic: 'static-leak-rate', upper: 0.01 })
const leakLimits = buildJudgeContext({ limitSet: buildLimitSet({ limits: [leakLimit] }) })

/** Without a budget, as records older than budgets are: the value alone is compared. */
const bareTest = (changes: Parameters<typeof buildStaticTest>[0] = {}) =>
  buildStaticTest({ dropUncertainty: null, leakUncertainty: null, ...changes })

const judgedBy = (...limits: readonly Limit[]) =>
  buildJudgeContext({ limitSet: buildLimitSet({ limits }) })
const dropOf = (changes: Parameters<typeof buildStaticTest>[0]) =>
  judgeStaticTest(bareTest(changes), dropLimits)[0]
const leakOf = (changes: Parameters<typeof buildStaticTest>[0]) =>
  judgeStaticTest(bareTest(changes), leakLimits)[1]

test('answers drop and leak rate, in that order, with what they are', () => {
  const judged = judgeStaticTest(bareTest(), dropLimits)
  expect(judged.map((one) => one.characteristic)).toEqual(['static-drop', 'static-leak-rate'])
})

describe('drop', () => {
  test('passes at the limit and fails beyond it', () => {
    const at = dropOf({ startPressureKPaAbs: 270, endPressureKPaAbs: 256 })
    expect([at?.verdict, at?.why, at?.value]).toEqual(['pass', 'within-limit', 14])
    const beyond = dropOf({ startPressureKPaAbs: 270, endPressureKPaAbs: 255.99 })
    expect([beyond?.verdict, beyond?.why]).toEqual(['fail', 'beyond-limit'])
  })

  test('is comparable up to the volume that the limit is written for', () => {
    expect(dropOf({ volumeL: 28 })?.verdict).toBe('pass')
    const larger = dropOf({ volumeL: 28.01 })
    expect([larger?.verdict, larger?.why, larger?.limit?.id]).toEqual([
      'open',
      'volume-too-large',
      2,
    ])
  })

  test('is comparable from the hold that the limit is written for', () => {
    expect(dropOf({ durationS: 300 })?.verdict).toBe('pass')
    expect(dropOf({ durationS: 600 })?.verdict).toBe('pass')
    const shorter = dropOf({ durationS: 299 })
    expect([shorter?.verdict, shorter?.why]).toEqual(['open', 'hold-too-short'])
  })

  describe('with a limit that is written for a start of 170 kPa gauge', () => {
    const written = judgedBy(
      buildLimit({ id: 5, characteristic: 'static-drop', upper: 14, startAtLeastKPaGauge: 170 }),
    )
    const judgedOf = (changes: Parameters<typeof buildStaticTest>[0]) =>
      judgeStaticTest(bareTest(changes), written)[0]

    test('is not judged where the hold began lower and the drop keeps the limit', () => {
      // 0.2 bar gauge: 20 + 101.325 kPa.
      const low = judgedOf({ startPressureKPaAbs: 121.325, endPressureKPaAbs: 121.3 })
      expect([low?.verdict, low?.why, low?.limit?.id]).toEqual(['open', 'pressure-too-low', 5])
      const justBelow = judgedOf({ startPressureKPaAbs: 271.315, endPressureKPaAbs: 271 })
      expect(justBelow?.why).toBe('pressure-too-low')
    })

    test('is judged from that pressure on, whatever rounding the sum has left', () => {
      for (const barometerKPa of [99.8, 101.325, 101.7, 102.6]) {
        const startPressureKPaAbs = 170 + barometerKPa
        const at = judgedOf({ barometerKPa, startPressureKPaAbs, endPressureKPaAbs: 270 })
        expect(at?.verdict).toBe('pass')
      }
      expect(judgedOf({ startPressureKPaAbs: 401, endPressureKPaAbs: 386 })?.verdict).toBe('fail')
    })

    test('takes the gauge pressure over the barometer that stands in the record', () => {
      const startPressureKPaAbs = 271
      expect(judgedOf({ startPressureKPaAbs, barometerKPa: 101 })?.verdict).toBe('pass')
      expect(judgedOf({ startPressureKPaAbs, barometerKPa: 102 })?.why).toBe('pressure-too-low')
    })
  })

  test('fails all the more where a milder test exceeds it already', () => {
    // Shorter, from more gas, or under less pressure, the same leak shows a smaller drop.
    for (const milder of [{ durationS: 60 }, { volumeL: 100 }]) {
      const judged = dropOf({ ...milder, endPressureKPaAbs: 200 })
      expect([judged?.verdict, judged?.why]).toEqual(['fail', 'beyond-limit'])
    }
    const written = judgedBy(
      buildLimit({ characteristic: 'static-drop', upper: 14, startAtLeastKPaGauge: 170 }),
    )
    const low = { startPressureKPaAbs: 121.325, endPressureKPaAbs: 101.325 }
    expect(judgeStaticTest(bareTest(low), written)[0]?.verdict).toBe('fail')
  })

  test('is not judged where the pressure rose by more than it may fall', () => {
    const risen = dropOf({ endPressureKPaAbs: 285.01 })
    expect([risen?.verdict, risen?.why]).toEqual(['open', 'gas-came-in'])
    expect(dropOf({ endPressureKPaAbs: 285 })?.verdict).toBe('pass')
  })

  test('is always comparable where the limit names neither volume nor hold nor start', () => {
    const plain = judgedBy(buildLimit({ characteristic: 'static-drop', upper: 14 }))
    const judged = judgeStaticTest(
      bareTest({
        volumeL: 500,
        durationS: 10,
        startPressureKPaAbs: 102,
        endPressureKPaAbs: 101,
      }),
      plain,
    )[0]
    expect(judged?.verdict).toBe('pass')
  })

  test('is open without a limit', () => {
    const judged = judgeStaticTest(bareTest(), leakLimits)[0]
    expect([judged?.verdict, judged?.why, judged?.limit, judged?.value]).toEqual([
      'open',
      'no-limit',
      null,
      1,
    ])
  })
})

describe('a hold that did not begin above the air around', () => {
  const limits = judgedBy(
    buildLimit({ id: 6, characteristic: 'static-drop', upper: 14 }),
    leakLimit,
  )
  test.each([
    ['without any pressure', 101.325, 101.325],
    ['under a vacuum that held', 20, 20],
    ['under a vacuum that broke', 20, 90],
  ])('is judged neither by drop nor by leak rate: %s', (_, startPressureKPaAbs, end) => {
    const test = bareTest({ startPressureKPaAbs, endPressureKPaAbs: end })
    for (const judged of judgeStaticTest(test, limits)) {
      expect([judged.verdict, judged.why]).toEqual(['open', 'not-above-air'])
    }
  })
})

describe('leak rate', () => {
  test('passes and fails by the limit', () => {
    // 2 L x 1 kPa / 300 s = 0.00667 Pa m3/s; at 2 kPa twice that.
    expect(leakOf({})?.verdict).toBe('pass')
    expect(leakOf({ endPressureKPaAbs: 269 })?.verdict).toBe('fail')
  })

  test('passes a rise within the limit: no gas was seen to leave', () => {
    const risen = leakOf({ endPressureKPaAbs: 272 })
    expect(risen?.verdict).toBe('pass')
    expect(risen?.value).toBeLessThan(0)
  })

  test('is not judged where more gas came in than may leave: something fed the volume', () => {
    const fed = leakOf({ endPressureKPaAbs: 273 })
    expect([fed?.verdict, fed?.why]).toEqual(['open', 'gas-came-in'])
    expect(fed?.value).toBeLessThan(-0.01)
  })

  test('is compared at 20 °C, whatever temperature the rig reports it at', () => {
    const at20 = leakOf({})?.value
    const at0 = leakOf({ referenceTemperatureC: 0 })
    expect(at0?.value).toBeCloseTo(at20 ?? 0, 14) // rounding of doubles
    expect(bareTest({ referenceTemperatureC: 0 }).leakPaM3PerS).toBeLessThan(at20 ?? 0)
  })

  test('is open without a limit', () => {
    expect(judgeStaticTest(bareTest(), dropLimits)[1]?.why).toBe('no-limit')
  })
})

describe('with its uncertainty', () => {
  const guarded = (limit: Limit) => {
    const { agreedRule } = buildJudgeContext()
    return buildJudgeContext({
      limitSet: buildLimitSet({ limits: [limit] }),
      agreedRule: { ...agreedRule, rule: 'guard-u95' },
    })
  }
  // A drop of 13 kPa: 271 to 258.
  const near = { endPressureKPaAbs: 258, dropUncertainty: buildUncertainty(0.6) }

  test('a drop within the limit can be refused by the guard band', () => {
    const limit = buildLimit({ characteristic: 'static-drop', upper: 14 })
    const judged = judgeStaticTest(buildStaticTest(near), guarded(limit))[0]
    expect([judged?.verdict, judged?.why]).toEqual(['fail', 'within-guard'])
    expect(judgeStaticTest(buildStaticTest(near), judgedBy(limit))[0]?.verdict).toBe('pass')
  })

  test('a drop that is not comparable stays open, whatever the guard band says', () => {
    const limit = buildLimit({ characteristic: 'static-drop', upper: 14, withinS: 600 })
    const judged = judgeStaticTest(buildStaticTest(near), guarded(limit))[0]
    expect([judged?.verdict, judged?.why, judged?.decision]).toEqual([
      'open',
      'hold-too-short',
      null,
    ])
  })

  test('a drop beyond the limit fails, comparable or not', () => {
    const limit = buildLimit({ characteristic: 'static-drop', upper: 14, withinS: 600 })
    const beyond = { ...near, endPressureKPaAbs: 250 }
    expect(judgeStaticTest(buildStaticTest(beyond), guarded(limit))[0]?.why).toBe('beyond-limit')
  })

  test('a leak rate and its uncertainty are brought to the temperature of the limit', () => {
    const test = buildStaticTest({
      referenceTemperatureC: 0,
      leakUncertainty: buildUncertainty(0.0004),
    })
    const { decision, value } = judgeStaticTest(test, leakLimits)[1] ?? {}
    // 293.15 K / 273.15 K.
    expect((value ?? 0) / test.leakPaM3PerS).toBeCloseTo(293.15 / 273.15, 12) // doubles
    const share = (0.0008 * (293.15 / 273.15)) / 0.01
    expect(decision?.uncertaintyShare).toBeCloseTo(share, 12) // doubles
  })

  test('is needed by a guard band: without it nothing is decided', () => {
    const limit = buildLimit({ characteristic: 'static-drop', upper: 14 })
    const judged = judgeStaticTest(bareTest(), guarded(limit))[0]
    expect([judged?.verdict, judged?.why]).toEqual(['undecidable', 'no-uncertainty'])
  })
})
