import { describe, expect, test } from 'vitest'
import type { Evidence } from '../../src/domain/evidence.ts'
import { type ReleaseQuestion, releaseFaults } from '../../src/domain/release-faults.ts'
import { roles } from '../../src/domain/role.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildInstrumentUse } from '../support/build-instrument.ts'
import { buildLimitSet } from '../support/build-limit-set.ts'
import { buildDecision, buildHandOver } from '../support/build-release.ts'
import { buildStaticTest } from '../support/build-static-test.ts'
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
      { id: 'result-fails', characteristic: 'static-drop', section: 'inboard', componentKind: null },
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
