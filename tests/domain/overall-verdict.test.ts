import { describe, expect, test } from 'vitest'
import { houseRule } from '../../src/domain/agreed-rule.ts'
import type { Evidence } from '../../src/domain/evidence.ts'
import { overallVerdict } from '../../src/domain/overall-verdict.ts'
import { worstVerdict } from '../../src/domain/worst-verdict.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildLimit, buildLimitSet } from '../support/build-limit-set.ts'
import { buildStaticTest } from '../support/build-static-test.ts'
import { buildUncertainty } from '../support/build-uncertainty.ts'

const overall = (changes: Partial<Evidence> = {}) => overallVerdict(buildEvidence(changes))
const rotating = (flatnessUm: number) =>
  buildFlatnessReading({ id: 1, flatnessUm, uncertainty: buildUncertainty(0.05) })
const seat = buildFlatnessReading({ id: 2, componentId: 12, faceKind: 'stationary-seat' })

describe('the worst of several verdicts', () => {
  const fromBest = [
    'pass',
    'conditional-pass',
    'open',
    'conceded',
    'conceded-open',
    'undecidable',
    'conditional-fail',
    'fail',
  ] as const

  test('is the later one in the order of the house, whichever stands first', () => {
    for (const [index, worse] of fromBest.entries()) {
      for (const better of fromBest.slice(0, index + 1)) {
        const isBoth = better === 'open' && worse === 'conceded'
        const expected = isBoth ? 'conceded-open' : worse
        expect(worstVerdict([better, worse])).toBe(expected)
        expect(worstVerdict([worse, better, better])).toBe(expected)
      }
    }
  })

  test('over nothing is no pass', () => {
    expect(worstVerdict([])).toBe('open')
  })
})

describe('the verdict over an order', () => {
  test('is a pass where both faces and a test pass', () => {
    expect(overall()).toBe('pass')
  })

  test('is a fail where one face fails, whatever the rest does', () => {
    expect(overall({ flatnessReadings: [rotating(1.2), seat] })).toBe('fail')
  })

  test('follows the agreed rule', () => {
    const flatnessReadings = [rotating(0.85), { ...seat, uncertainty: buildUncertainty(0.05) }]
    const staticTests = [buildStaticTest({ dropUncertainty: buildUncertainty(0.05) })]
    const by = (rule: typeof houseRule.rule) =>
      overall({ flatnessReadings, staticTests, agreedRule: { ...houseRule, rule } })
    expect(by('simple')).toBe('pass')
    expect(by('four-outcomes')).toBe('conditional-pass')
    expect(by('guard-probability')).toBe('undecidable')
    expect(by('guard-u95')).toBe('fail')
  })

  test('is open where a face was not read, or nothing was tested', () => {
    expect(overall({ flatnessReadings: [rotating(0.3)] })).toBe('open')
    expect(overall({ staticTests: [] })).toBe('open')
    const asFound = { ...seat, condition: 'as-found' as const }
    expect(overall({ flatnessReadings: [rotating(0.3), asFound] })).toBe('open')
  })

  test('asks of a test no limit that the set doesn’t have, beside the one that it has', () => {
    expect(overall()).toBe('pass')
    const flatnessOnly = buildLimitSet({ limits: [buildLimit()] })
    expect(overall({ limitSet: flatnessOnly })).toBe('open')
  })

  test('says that the customer takes what fails, once all of it is conceded', () => {
    const concession = {
      id: 1,
      workOrderId: 1,
      subjectKind: 'flatness-reading',
      subjectId: 1,
      characteristic: 'flatness',
      reason: 'runs on water at 2 bar',
      customerReference: 'Letter 4711',
      byId: 2,
      byName: 'Ian',
      at: '2026-11-25T09:00:00.000Z',
    } as const
    const flatnessReadings = [rotating(1.2), seat]
    const concessions = [concession]
    expect(overall({ flatnessReadings, concessions })).toBe('conceded')
    const staticTests = [buildStaticTest({ endPressureKPaAbs: 200 })]
    expect(overall({ flatnessReadings, concessions, staticTests })).toBe('fail')
    // A concession hides neither a test that was not made nor a face that was not read.
    expect(overall({ flatnessReadings, concessions, staticTests: [] })).toBe('conceded-open')
    // A concession of what passes changes nothing.
    expect(overall({ concessions })).toBe('pass')
  })
})
