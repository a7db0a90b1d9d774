import { describe, expect, test } from 'vitest'
import { houseRule } from '../../src/domain/agreed-rule.ts'
import type { Evidence } from '../../src/domain/evidence.ts'
import {
  type ReleaseQuestion,
  releaseFaults,
  usesOutOfCalibration,
} from '../../src/domain/release-faults.ts'
import { roles } from '../../src/domain/role.ts'
import { type DecisionRule, decisionRules } from '../../src/science/acceptance/decision-rule.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildInstrumentUse } from '../support/build-instrument.ts'
import { buildLimitSet } from '../support/build-limit-set.ts'
import { buildDecision, buildHandOver } from '../support/build-release.ts'
import { buildStaticTest } from '../support/build-static-test.ts'
import { buildUncertainty } from '../support/build-uncertainty.ts'
import { buildUser } from '../support/build-user.ts'
import { buildWorkOrder } from '../support/build-work-order.ts'

const ask = (changes: Partial<Evidence> = {}, question: Partial<ReleaseQuestion> = {}) => {
  const evidence = buildEvidence(changes)
  return releaseFaults({ evidence, user: buildUser(), handOver: evidence.handOver, ...question })
}
const ids = (...asked: Parameters<typeof ask>) => ask(...asked).map((one) => one.id)

const rotating = buildFlatnessReading({ id: 1 })
const seat = buildFlatnessReading({ id: 2, componentId: 12, faceKind: 'stationary-seat' })
const nineBands = [
  { directionDeg: 0, bands: 9, bandsTyped: '9' },
  { directionDeg: 90, bands: 9, bandsTyped: '9' },
]
const failing = { directions: nineBands } as const

test('lets an independent inspector release what is handed over and passes', () => {
  expect(ask()).toEqual([])
})

describe('who releases', () => {
  test('is an inspector and nobody else', () => {
    const allowed = roles.filter((role) => ids({}, { user: buildUser({ role }) }).length === 0)
    expect(allowed).toEqual(['inspector'])
    expect(ids({}, { user: buildUser({ role: 'manager' }) })).toEqual(['not-inspector'])
  })

  test('is active', () => {
    expect(ids({}, { user: buildUser({ isActive: false }) })).toEqual(['not-inspector'])
  })

  // EN 10204:2004, type 3.1: the releaser is independent of the manufacturing department.
  test('recorded no reading of the order', () => {
    const mine = { ...rotating, recordedById: 2 }
    expect(ids({ flatnessReadings: [mine, seat] })).toEqual(['lapped-or-tested'])
  })

  test('recorded no reading since replaced or as found either', () => {
    const replaced = buildFlatnessReading({ id: 3, recordedById: 2, replacedById: 1 })
    expect(ids({ flatnessReadings: [replaced, rotating, seat] })).toEqual(['lapped-or-tested'])
    const asFound = buildFlatnessReading({ id: 3, recordedById: 2, condition: 'as-found' })
    expect(ids({ flatnessReadings: [asFound, rotating, seat] })).toEqual(['lapped-or-tested'])
  })

  test('recorded no static test, one since replaced either', () => {
    expect(ids({ staticTests: [buildStaticTest({ recordedById: 2 })] })).toEqual([
      'lapped-or-tested',
    ])
    const replaced = buildStaticTest({ id: 3, recordedById: 2, replacedById: 1 })
    expect(ids({ staticTests: [replaced, buildStaticTest()] })).toEqual(['lapped-or-tested'])
  })

  test('did not hand the order over', () => {
    expect(ids({ handOver: buildHandOver({ byId: 2 }) })).toEqual(['lapped-or-tested'])
  })
})

describe('the hand-over', () => {
  test('exists, is of this order, is the latest, and the order stands handed over', () => {
    expect(ids({ handOver: null })).toEqual(['not-handed-over'])
    expect(ids({ handOver: buildHandOver({ workOrderId: 7 }) })).toEqual(['not-handed-over'])
    expect(ids({ handOver: buildHandOver({ id: 2 }) }, { handOver: buildHandOver() })).toEqual([
      'not-handed-over',
    ])
    expect(ids({ workOrder: buildWorkOrder({ stage: 'lapping' }) })).toEqual(['not-handed-over'])
  })

  test('is undecided; otherwise it is told who decided', () => {
    expect(ask({ decisions: [buildDecision({ byName: 'Ines' })] })).toEqual([
      { id: 'already-decided', byName: 'Ines' },
    ])
  })

  test('may follow a refusal of an earlier one', () => {
    const refused = buildDecision({ outcome: 'refused', reason: 'seat turned edge' })
    expect(ids({ handOver: buildHandOver({ id: 2 }), decisions: [refused] })).toEqual([])
  })
})

describe('results', () => {
  test('block where a face fails, and are named with it', () => {
    const reading = buildFlatnessReading({ id: 1, ...failing })
    expect(ask({ flatnessReadings: [reading, seat] })).toEqual([
      {
        id: 'result-fails',
        characteristic: 'flatness',
        verdict: 'fail',
        why: 'beyond-limit',
        componentKind: 'rotating-face',
        section: null,
      },
    ])
  })

  test('block where a face can’t be read', () => {
    const unreadable = buildFlatnessReading({ id: 3, pattern: 'unreadable', directions: [] })
    expect(ask({ flatnessReadings: [rotating, seat, unreadable] })).toMatchObject([
      { id: 'something-missing' },
      { id: 'result-fails', why: 'unreadable' },
    ])
  })

  test('block where a static test fails, in any section', () => {
    const inboard = buildStaticTest({ id: 2, section: 'inboard', endPressureKPaAbs: 250 })
    expect(ask({ staticTests: [buildStaticTest(), inboard] })).toMatchObject([
      {
        id: 'result-fails',
        characteristic: 'static-drop',
        section: 'inboard',
        componentKind: null,
      },
    ])
  })

  test('do not block where the face failed as found, or before it was lapped again', () => {
    const asFound = buildFlatnessReading({ id: 3, ...failing, condition: 'as-found' })
    const before = buildFlatnessReading({ id: 4, ...failing })
    expect(ids({ flatnessReadings: [asFound, before, rotating, seat] })).toEqual([])
  })

  test('do not block where a failed reading or test was corrected', () => {
    const wrong = buildFlatnessReading({ id: 3, ...failing, replacedById: 1 })
    const wrongTest = buildStaticTest({ id: 3, endPressureKPaAbs: 100, replacedById: 1 })
    const changes = {
      flatnessReadings: [wrong, rotating, seat],
      staticTests: [wrongTest, buildStaticTest()],
    }
    expect(ids(changes)).toEqual([])
  })

  test('do not block where there is no limit to fail', () => {
    expect(ids({ limitSet: buildLimitSet({ limits: [] }) })).toEqual([])
  })

  test('are needed: nothing recorded is nothing passed', () => {
    expect(ids({ flatnessReadings: [], staticTests: [] })).toEqual(['something-missing'])
  })
})

describe('a result that is neither pass nor fail', () => {
  const ruleOf = (rule: DecisionRule) => ({ agreedRule: { ...houseRule, rule } })
  // U = 0.1: the guard band begins at 0.7814 of the limit of 0.8814.
  const at = (flatnessUm: number, u = 0.05) =>
    buildFlatnessReading({ id: 1, flatnessUm, uncertainty: buildUncertainty(u) })
  const quiet = buildStaticTest({ dropUncertainty: buildUncertainty(0.05) })
  const left = { ...seat, uncertainty: buildUncertainty(0.05) }
  const askOf = (rule: DecisionRule, reading: ReturnType<typeof at>) =>
    ask({ ...ruleOf(rule), flatnessReadings: [reading, left], staticTests: [quiet] })

  test('releases with a conditional pass, and not with a conditional fail', () => {
    expect(askOf('four-outcomes', at(0.85))).toEqual([])
    expect(askOf('four-outcomes', at(0.9))).toMatchObject([
      { id: 'result-fails', verdict: 'conditional-fail', why: 'beyond-within-guard' },
    ])
  })

  test('blocks where a guard band refuses it within the limit', () => {
    expect(askOf('guard-u95', at(0.85))).toMatchObject([
      { id: 'result-fails', verdict: 'fail', why: 'within-guard' },
    ])
  })

  test('blocks where the set-up can’t decide, by whatever rule', () => {
    for (const rule of decisionRules) {
      expect(askOf(rule, at(0.85, 0.2))).toMatchObject([
        { id: 'result-fails', verdict: 'undecidable', why: 'uncertainty-too-large' },
      ])
    }
  })

  test('blocks where the rule needs an uncertainty that nobody knows', () => {
    const bare = { ...at(0.1), uncertainty: null }
    expect(askOf('guard-u95', bare)).toMatchObject([{ why: 'no-uncertainty' }])
    expect(askOf('simple', bare)).toEqual([])
  })
})

describe('a concession', () => {
  const reading = buildFlatnessReading({ id: 1, ...failing })
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

  test('takes the result that it is about out of the way', () => {
    expect(ids({ flatnessReadings: [reading, seat], concessions: [concession] })).toEqual([])
  })

  test('takes no other result out of the way', () => {
    const flatnessReadings = [reading, seat]
    for (const other of [
      { subjectId: 2 },
      { subjectKind: 'static-test' },
      { characteristic: 'roughness' },
    ] as const) {
      const concessions = [{ ...concession, ...other }]
      expect(ids({ flatnessReadings, concessions })).toEqual(['result-fails'])
    }
  })

  test('is lost when the face is read again', () => {
    const again = buildFlatnessReading({ id: 3, ...failing })
    const evidence = { flatnessReadings: [reading, seat, again], concessions: [concession] }
    expect(ids(evidence)).toEqual(['result-fails'])
  })
})

describe('an instrument in doubt', () => {
  const doubt = {
    subjectKind: 'flatness-reading',
    subjectId: 1,
    calibrationId: 9,
    instrumentId: 1,
    instrumentNumber: 'L-01',
    foundOn: '2026-11-25',
    answer: null,
    reason: '',
    byName: '',
    at: '',
  } as const

  test('blocks until somebody says that the record stands', () => {
    for (const answer of [null, 'repeat', 'withdraw-certificate'] as const) {
      expect(ask({ doubts: [{ ...doubt, answer }] })).toEqual([
        { id: 'instrument-in-doubt', numbers: ['L-01'] },
      ])
    }
    expect(ids({ doubts: [{ ...doubt, answer: 'stands' }] })).toEqual([])
  })

  test('is named once, and only for records that still speak', () => {
    const both = [doubt, { ...doubt, subjectId: 2 }, { ...doubt, subjectId: 99 }]
    expect(ask({ doubts: both })).toEqual([{ id: 'instrument-in-doubt', numbers: ['L-01'] }])
    expect(ids({ doubts: [{ ...doubt, subjectId: 99 }] })).toEqual([])
    expect(ids({ doubts: [{ ...doubt, subjectKind: 'measured-value' }] })).toEqual([])
  })
})

describe('instruments out of calibration', () => {
  const overdue = buildInstrumentUse('pressure-gauge', { status: 'overdue' })
  const never = buildInstrumentUse('lamp', { status: 'never-calibrated' })
  const doubtful = {
    flatnessReadings: [
      { ...rotating, lamp: never },
      { ...seat, lamp: never },
    ],
    staticTests: [buildStaticTest({ gauge: overdue })],
  }
  const idsWith = (acknowledgement: string) => ids(doubtful, { acknowledgement })

  test('are named once each where nobody has acknowledged them', () => {
    expect(ask(doubtful)).toEqual([
      { id: 'instrument-not-acknowledged', numbers: ['L-01', 'G-01'] },
    ])
  })

  test('are acknowledged with a sentence, not with a blank or a word', () => {
    expect(idsWith('   ')).toEqual(['instrument-not-acknowledged'])
    expect(idsWith('   ok          ')).toEqual(['instrument-not-acknowledged'])
    expect(idsWith('Gauge checked against G-02 today, 0.1 kPa apart.')).toEqual([])
  })

  test('count for the optical flat and the thermometer too', () => {
    const flat = buildInstrumentUse('optical-flat', { status: 'withdrawn' })
    expect(ids({ flatnessReadings: [{ ...rotating, flat }, seat] })).toEqual([
      'instrument-not-acknowledged',
    ])
    const thermometer = buildInstrumentUse('thermometer', { status: 'overdue' })
    expect(ids({ staticTests: [buildStaticTest({ thermometer })] })).toEqual([
      'instrument-not-acknowledged',
    ])
  })

  test('need no second word where an inspector allowed the use beforehand', () => {
    const exception = {
      id: 1,
      fault: 'overdue',
      reason: 'compared with G-02',
      allowedByName: 'Ina',
      allowedAt: '2026-11-23T09:00:00.000Z',
    } as const
    const gauge = { ...overdue, exception }
    const evidence = buildEvidence({ staticTests: [buildStaticTest({ gauge })] })
    expect(ids({ staticTests: evidence.staticTests })).toEqual([])
    expect(usesOutOfCalibration(evidence)).toEqual([gauge])
  })

  test('need no word where their test was replaced or made again', () => {
    const replaced = buildStaticTest({ id: 2, gauge: overdue, replacedById: 1 })
    const earlier = buildStaticTest({ id: 3, gauge: overdue })
    expect(ids({ staticTests: [replaced, earlier, buildStaticTest()] })).toEqual([])
  })
})

test('names everything at once', () => {
  const user = buildUser({ id: 1, role: 'technician' })
  const changes = {
    workOrder: buildWorkOrder({ decontamination: 'not-stated' }),
    handOver: null,
    flatnessReadings: [buildFlatnessReading(failing)],
  }
  expect(ids(changes, { user })).toEqual([
    'not-inspector',
    'lapped-or-tested',
    'not-handed-over',
    'something-missing',
    'result-fails',
  ])
})
