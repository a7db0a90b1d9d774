import { describe, expect, test } from 'vitest'
import type { SurveyRecord } from '../../src/domain/dial-survey.ts'
import type { Evidence } from '../../src/domain/evidence.ts'
import { missingForHandOver } from '../../src/domain/missing-for-hand-over.ts'
import { arrangements } from '../../src/domain/seal.ts'
import type { TestSection } from '../../src/domain/static-test.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildLimitSet } from '../support/build-limit-set.ts'
import { buildComponent, buildSeal } from '../support/build-seal.ts'
import { buildStaticTest } from '../support/build-static-test.ts'
import { freshSurvey } from '../support/build-survey.ts'
import { buildWorkOrder } from '../support/build-work-order.ts'
import { castAt } from '../support/cast.ts'

const missing = (changes: Partial<Evidence> = {}) => missingForHandOver(buildEvidence(changes))
const rotating = buildFlatnessReading({ id: 1 })
const seat = buildFlatnessReading({ id: 2, componentId: 12, faceKind: 'stationary-seat' })

test('misses nothing where both faces are read twice, a test is made and the fluid is stated', () => {
  expect(missing()).toEqual([])
})

test('misses everything of an order just received, in the order of the work', () => {
  const workOrder = buildWorkOrder({ decontamination: 'not-stated' })
  expect(missing({ workOrder, flatnessReadings: [], staticTests: [] })).toEqual([
    { kind: 'decontamination' },
    { kind: 'flatness', faceKind: 'rotating-face' },
    { kind: 'flatness', faceKind: 'stationary-seat' },
    { kind: 'static-test' },
  ])
})

test('takes a fluid stated clean or not needed', () => {
  expect(missing({ workOrder: buildWorkOrder({ decontamination: 'stated-clean' }) })).toEqual([])
  expect(missing({ workOrder: buildWorkOrder({ decontamination: 'not-needed' }) })).toEqual([])
})

describe('flatness', () => {
  test('asks for the faces that the seal has, and no others', () => {
    const seal = buildSeal({ components: [buildComponent()] })
    expect(missing({ seal, flatnessReadings: [rotating] })).toEqual([])
  })

  test('asks for a face where the seal has none on record', () => {
    const seal = buildSeal({ components: [buildComponent({ kind: 'spring' })] })
    expect(missing({ seal, flatnessReadings: [] })).toEqual([{ kind: 'flatness' }])
  })

  test('is not met by a reading as found', () => {
    const asFound = { ...rotating, condition: 'as-found' } as const
    expect(missing({ flatnessReadings: [asFound, seat] })).toEqual([
      { kind: 'flatness', faceKind: 'rotating-face' },
    ])
  })

  test('is not met by a replaced reading', () => {
    expect(missing({ flatnessReadings: [rotating, { ...seat, replacedById: 9 }] })).toEqual([
      { kind: 'flatness', faceKind: 'stationary-seat' },
    ])
  })

  test('is not met by an unreadable face, which stands as the newest reading', () => {
    const unreadable = buildFlatnessReading({ id: 3, pattern: 'unreadable', directions: [] })
    expect(missing({ flatnessReadings: [rotating, seat, unreadable] })).toEqual([
      { kind: 'readable-flatness', faceKind: 'rotating-face' },
    ])
  })

  test('is met by a reading that fails: that is the inspector’s to see', () => {
    const directions = [
      { directionDeg: 0, bands: 9, bandsTyped: '9' },
      { directionDeg: 90, bands: 9, bandsTyped: '9' },
    ]
    expect(missing({ flatnessReadings: [buildFlatnessReading({ directions }), seat] })).toEqual([])
  })
})

describe('directions', () => {
  const readIn = (...degrees: readonly number[]) =>
    buildFlatnessReading({
      directions: degrees.map((directionDeg) => ({ directionDeg, bands: 1, bandsTyped: '1' })),
    })
  const missingIn = (neededCount: number, ...degrees: readonly number[]) =>
    missing({
      limitSet: buildLimitSet({ directionsRequiredCount: neededCount }),
      flatnessReadings: [
        readIn(...degrees),
        { ...readIn(0, 45, 90), componentId: 12, faceKind: 'stationary-seat' },
      ],
    })

  test('are as many as the limit set asks for, in one reading', () => {
    expect(missingIn(1, 0)).toEqual([])
    expect(missingIn(2, 0, 90)).toEqual([])
    expect(missingIn(2, 0)).toEqual([
      {
        kind: 'second-direction',
        faceKind: 'rotating-face',
        with: { neededCount: 2, readCount: 1 },
      },
    ])
    expect(missingIn(3, 0, 90)).toMatchObject([{ with: { neededCount: 3, readCount: 2 } }])
  })

  test('count once where they are the same line across the face', () => {
    expect(missingIn(2, 0, 180)).toMatchObject([{ kind: 'second-direction' }])
    expect(missingIn(2, 90, 270, 360)).toEqual([])
  })
})

describe('the static test of a dual seal', () => {
  const tested = (...sections: readonly TestSection[]) =>
    missing({
      seal: buildSeal({ arrangement: 'dual' }),
      staticTests: sections.map((section, index) => buildStaticTest({ id: index + 1, section })),
    })

  test('is of the whole seal, or of each half', () => {
    expect(tested('whole')).toEqual([])
    expect(tested('inboard', 'outboard')).toEqual([])
    expect(tested('gland', 'whole')).toEqual([])
  })

  test('is missed as a whole where no half counts yet', () => {
    expect(tested()).toEqual([{ kind: 'static-test' }])
    expect(tested('gland')).toEqual([{ kind: 'static-test' }])
  })

  test('is missed by the name of the half that is left', () => {
    expect(tested('inboard')).toEqual([{ kind: 'static-test', section: 'outboard' }])
    expect(tested('outboard', 'gland')).toEqual([{ kind: 'static-test', section: 'inboard' }])
  })

  test('is asked of a dual cartridge too, and of no single seal', () => {
    const staticTests = [buildStaticTest({ section: 'inboard' })]
    for (const arrangement of arrangements) {
      const isDual = arrangement.includes('dual')
      const seal = buildSeal({ arrangement })
      expect(missing({ seal, staticTests }).length, arrangement).toBe(isDual ? 1 : 0)
    }
  })
})

test('is not met by a replaced static test', () => {
  expect(missing({ staticTests: [buildStaticTest({ replacedById: 2 })] })).toEqual([
    { kind: 'static-test' },
  ])
})

describe('surveys', () => {
  const { survey } = freshSurvey({ id: 1 }, { workOrderId: 1 })
  const open: SurveyRecord = {
    ...survey,
    id: 4,
    startedById: 1,
    startedByName: 'Tess Turner',
    startedAt: castAt,
    readings: [],
    end: null,
  }
  const end = { measuredValueId: null, result: null, byId: 1, byName: 'Tess Turner', at: castAt }

  test('misses the end of each that is neither recorded nor given up, last of all', () => {
    const givenUp = { ...open, id: 3, end: { ...end, outcome: 'given-up', reason: 'x' } } as const
    const recorded = { ...open, id: 5, end: { ...end, outcome: 'recorded', reason: '' } } as const
    const left = { kind: 'open-survey', survey: { id: 4, characteristic: 'shaft-run-out' } }
    expect(missing({ dialSurveys: [givenUp, open, recorded] })).toEqual([left])
    expect(missing({ dialSurveys: [open], staticTests: [] })).toEqual([
      { kind: 'static-test' },
      left,
    ])
  })
})
