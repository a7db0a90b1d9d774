import { describe, expect, test } from 'vitest'
import { largestLine } from '../../src/domain/largest-line.ts'
import { shownResult } from '../../src/domain/shown-result.ts'
import { smallestSeenLeak } from '../../src/domain/smallest-seen-leak.ts'
import { testUncertainty } from '../../src/domain/test-uncertainty.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildStaticTest } from '../support/build-static-test.ts'

const evidence = buildEvidence({
  flatnessReadings: [
    buildFlatnessReading({ id: 5, replacedById: 6 }),
    buildFlatnessReading({ id: 6, replacesId: 5, pattern: 'unreadable', note: 'dull' }),
  ],
  staticTests: [buildStaticTest({ id: 7 })],
})

describe('one result of an order', () => {
  test('is found by its kind and id, with its judgement and its instruments', () => {
    const reading = shownResult(evidence, 'flatness-reading', 5)
    expect(reading).toMatchObject({ characteristic: 'flatness', on: 'rotating-face', id: 5 })
    expect(reading?.judged.value).toBeCloseTo(0.5875618, 12) // two helium bands, doubles
    expect(reading?.instruments.map((one) => one.number)).toEqual(['L-01', 'F-01'])
    expect(reading?.isReplaced).toBe(true)
  })

  test('is one of the two figures of a static test', () => {
    const leak = shownResult(evidence, 'static-test-leak', 7)
    const drop = shownResult(evidence, 'static-test-drop', 7)
    expect([leak?.characteristic, drop?.characteristic]).toEqual([
      'static-leak-rate',
      'static-drop',
    ])
    expect(drop?.judged.value).toBe(1)
    expect(leak?.uncertainty?.budget.map((line) => line.source)).toContain('volume')
    expect(drop?.uncertainty?.budget.map((line) => line.source)).not.toContain('volume')
  })

  test('may have no figure: an unreadable face', () => {
    const unreadable = shownResult(evidence, 'flatness-reading', 6)
    expect([unreadable?.judged.value, unreadable?.uncertainty]).toEqual([null, null])
    expect([unreadable?.judged.verdict, unreadable?.note]).toEqual(['fail', 'dull'])
  })

  test('is not there under another kind or id', () => {
    expect(shownResult(evidence, 'static-test-leak', 5)).toBeUndefined()
    expect(shownResult(evidence, 'flatness-reading', 7)).toBeUndefined()
    expect(shownResult(evidence, 'measured-value', 5)).toBeUndefined()
  })
})

describe('the largest line of a budget', () => {
  const uncertainty = buildStaticTest().leakUncertainty!

  test('is the one that contributes most, with its share of the variance', () => {
    const largest = largestLine(uncertainty)
    const contributions = uncertainty.budget.map((line) => line.contribution)
    expect(largest?.line.contribution).toBe(Math.max(...contributions))
    const variance = contributions.reduce((sum, one) => sum + one ** 2, 0)
    const share = (largest?.line.contribution ?? 0) ** 2 / variance
    expect(largest?.varianceShare).toBeCloseTo(share, 12) // rounding of doubles
  })

  test('is none where nothing contributes', () => {
    expect(largestLine({ budget: [], standardUncertainty: 0 })).toBeNull()
  })
})

describe('the smallest leak that a set-up can see', () => {
  test('is 3.29 times what the budget has without a leak: no volume and no time', () => {
    const { leakUncertainty } = buildStaticTest()
    const noise = leakUncertainty!.budget.filter((line) => /pressure|temperature/.test(line.source))
    expect(noise.length).toBe(4)
    const expected = 3.29 * Math.hypot(...noise.map((line) => line.contribution))
    expect(smallestSeenLeak(leakUncertainty)).toBeCloseTo(expected, 12) // rounding of doubles
  })

  test('is not known without pressure and temperature', () => {
    expect(smallestSeenLeak(null)).toBeNull()
    expect(smallestSeenLeak({ budget: [] })).toBeNull()
  })
})

describe('the uncertainty of a leak at the temperature of its limit', () => {
  test('goes with the leak, contributions and all', () => {
    const cold = buildStaticTest({ referenceTemperatureC: 0 })
    const factor = 293.15 / 273.15
    const judged = {
      characteristic: 'static-leak-rate',
      value: cold.leakPaM3PerS * factor,
    } as const
    const shown = testUncertainty(cold, judged)!
    const kept = cold.leakUncertainty!
    expect(shown.standardUncertainty / kept.standardUncertainty).toBeCloseTo(factor, 12) // doubles
    expect(Math.hypot(...shown.budget.map((line) => line.contribution))).toBeCloseTo(
      shown.standardUncertainty,
      12, // rounding of doubles
    )
    expect(shown.coverageFactor).toBe(kept.coverageFactor)
  })

  test('is the kept one where the leak is stated for that temperature', () => {
    const test = buildStaticTest()
    const judged = { characteristic: 'static-leak-rate', value: test.leakPaM3PerS } as const
    expect(testUncertainty(test, judged)).toBe(test.leakUncertainty)
  })
})
