import { describe, expect, it } from 'vitest'
import { certificateRecord } from '../../src/domain/certificate-record.ts'
import { figure } from '../../src/domain/figure.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildInstrumentUse } from '../support/build-instrument.ts'
import { buildStaticTest } from '../support/build-static-test.ts'
import {
  failingRecord,
  longRecord,
  ordinaryEvidence,
  ordinaryRecord,
  sampleInput,
} from '../support/sample-certificate.ts'

describe('the record of a certificate', () => {
  it('is plain data: its JSON is the whole of it', () => {
    for (const record of [ordinaryRecord(), longRecord(), failingRecord()]) {
      expect(JSON.parse(JSON.stringify(record))).toEqual(record)
    }
  })

  it('is the same every time and changes nothing it was given', () => {
    const input = sampleInput()
    const before = JSON.stringify(input)
    expect(certificateRecord(input)).toEqual(certificateRecord(input))
    expect(JSON.stringify(input)).toBe(before)
  })

  it('carries each value unrounded with the text that is printed', () => {
    const [rotating] = ordinaryRecord().faces
    // 1.25 helium bands: 1.25 · 587.5618 nm / 2 = 0.367226 µm.
    expect(rotating?.asLeft?.flatnessUm?.value).toBeCloseTo(0.367226, 6)
    expect(rotating?.asLeft?.flatnessUm?.text).toBe('0.367')
    expect(rotating?.asLeft?.flatnessUin?.text).toBe('14.5')
    expect(rotating?.asLeft?.lampId).toBe('helium')
  })

  it('states a leak rate as computed by the gas law, in both units', () => {
    const [test] = ordinaryRecord().staticTests
    // 5 L · 293.15 K / 600 s · (271325 Pa / 294.15 K − 268125 Pa / 293.65 K), 101.325 kPa.
    const leakPaM3PerS = ((0.005 * 293.15) / 600) * (271_325 / 294.15 - 268_125 / 293.65)
    expect(test?.leakPaM3PerS.value).toBeCloseTo(leakPaM3PerS, 12)
    expect(test?.leakMlPerMin.value).toBeCloseTo((leakPaM3PerS * 60e6) / 101_325, 9)
  })

  it('passes only when each face as left and the static test pass', () => {
    expect(ordinaryRecord().verdict).toBe('pass')
    expect(failingRecord().verdict).toBe('fail')
  })

  it('does not call it a pass where a face was not read or no test was made', () => {
    const whole = ordinaryEvidence()
    const oneFace = { ...whole, flatnessReadings: whole.flatnessReadings.slice(0, 2) }
    const noTest = { ...whole, staticTests: [] }
    expect(ordinaryRecord({ evidence: oneFace }).verdict).toBe('open')
    expect(ordinaryRecord({ evidence: noTest }).verdict).toBe('open')
  })

  it('does not call it a pass where a limit of drop could not be applied to the test', () => {
    const whole = ordinaryEvidence()
    const staticTests = whole.staticTests.map((one) => ({ ...one, volumeL: 29 }))
    const record = ordinaryRecord({ evidence: { ...whole, staticTests } })
    expect(record.staticTests[0]?.leak.verdict).toBe('pass')
    expect(record.verdict).toBe('open')
  })

  it('takes one limit of drop or leak rate as enough where the set has no other', () => {
    const whole = ordinaryEvidence()
    const limits = whole.limitSet.limits.filter((one) => one.characteristic !== 'static-drop')
    const evidence = { ...whole, limitSet: { ...whole.limitSet, limits } }
    const record = ordinaryRecord({ evidence })
    expect(record.staticTests[0]?.drop.why).toBe('no-limit')
    expect(record.verdict).toBe('pass')
  })

  it('takes no face as passed that could not be read', () => {
    const whole = ordinaryEvidence()
    const unreadable = buildFlatnessReading({ id: 9, pattern: 'unreadable', directions: [] })
    const evidence = { ...whole, flatnessReadings: [...whole.flatnessReadings, unreadable] }
    const record = ordinaryRecord({ evidence })
    expect(record.verdict).toBe('fail')
    expect(record.faces[0]?.asLeft).toMatchObject({ verdict: 'fail', why: 'unreadable' })
    expect(record.faces[0]?.earlier).toHaveLength(1)
  })

  it('leaves replaced readings to the corrections', () => {
    const whole = ordinaryEvidence()
    const wrong = buildFlatnessReading({ id: 20, replacedById: 21 })
    const right = buildFlatnessReading({
      id: 21,
      replacesId: 20,
      reason: 'Wrong lamp chosen',
      directions: [{ directionDeg: 0, bands: 1, bandsTyped: '1' }],
    })
    const evidence = {
      ...whole,
      flatnessReadings: [wrong, right, ...whole.flatnessReadings.slice(2)],
    }
    const { corrections, faces } = ordinaryRecord({ evidence })
    expect(corrections).toMatchObject([
      {
        was: { figure: { text: '0.588' } },
        became: { figure: { text: '0.294' } },
        reason: 'Wrong lamp chosen',
      },
    ])
    expect(faces[0]?.earlier).toEqual([])
  })

  it('names an instrument once for each state of its calibration, with its days', () => {
    const gauge = (status: 'in-calibration' | 'overdue', dueOn: string) =>
      buildInstrumentUse('pressure-gauge', { status, dueOn })
    const evidence = ordinaryEvidence({
      staticTests: [
        buildStaticTest({ id: 1, gauge: gauge('in-calibration', '2026-11-24') }),
        buildStaticTest({
          id: 2,
          gauge: gauge('overdue', '2026-11-24'),
          startedAt: '2026-11-25T10:00:00.000Z',
        }),
      ],
    })
    const { instruments } = ordinaryRecord({ evidence })
    expect(instruments.filter((one) => one.number === 'G-01')).toMatchObject([
      { status: 'in-calibration', usedOn: ['2026-11-24'] },
      { status: 'overdue', usedOn: ['2026-11-25'] },
    ])
  })

  it.each([
    ['recorded a reading', 1, false],
    ['did neither', 9, true],
  ])('knows the releaser who %s', (_, byId, isIndependent) => {
    const decision = { ...sampleInput().decision, byId }
    expect(ordinaryRecord({ decision }).release.isIndependent).toBe(isIndependent)
  })

  it('counts a replaced reading and the hand-over as work too', () => {
    const { handOver, flatnessReadings } = ordinaryEvidence()
    if (handOver === null) throw new Error('the sample has no hand-over')
    const decision = { ...sampleInput().decision, byId: 9 }
    const replaced = buildFlatnessReading({ id: 50, recordedById: 9, replacedById: 1 })
    const own = [
      ordinaryEvidence({ handOver: { ...handOver, byId: 9 } }),
      ordinaryEvidence({ flatnessReadings: [replaced, ...flatnessReadings] }),
    ]
    for (const evidence of own) {
      expect(ordinaryRecord({ decision, evidence }).release.isIndependent).toBe(false)
    }
  })
})

describe('a printed figure', () => {
  it.each([
    [-0.00000943, { digits: 3 }, '−9.43 × 10⁻⁶'],
    [2.3e9, { digits: 2 }, '2.3 × 10⁹'],
    [1.0005, { decimals: 3 }, '1.001'],
    [-1.5, { decimals: 2 }, '−1.50'],
    [450, 'as-entered', '450'],
    [-12.25, 'as-entered', '−12.25'],
  ] as const)('writes %d rounded by %j as %s', (value, rounding, text) => {
    expect(figure(value, rounding)).toEqual({ value, text })
  })
})
