import { describe, expect, test } from 'vitest'
import type { Input } from '../../src/domain/fields.ts'
import { noFlatnessBudgetInput } from '../../src/domain/flatness-budget-input.ts'
import { parseFlatnessReading } from '../../src/domain/parse-flatness-reading.ts'
import { buildCalibration, buildInstrument, buildInstruments } from '../support/build-instrument.ts'
import { buildComponent, buildSeal } from '../support/build-seal.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const components = [...buildSeal().components, buildComponent({ id: 13, kind: 'spring' })]
const context = { components, instruments: buildInstruments(), today: '2026-11-25' }
const least = {
  faceId: '11',
  condition: 'as-left',
  lampInstrumentId: '1',
  opticalFlatInstrumentId: '2',
  pattern: 'convex',
  readings: [{ directionDeg: '0', bands: '2.0' }],
}
const parse = (changes: Input = {}) => parseFlatnessReading({ ...least, ...changes }, context)

test('reads the least reading and keeps the count as typed', () => {
  expect(accepted(parse({ readings: [{ directionDeg: '0', bands: ' 2,0 ' }] }))).toEqual({
    componentId: 11,
    condition: 'as-left',
    lampInstrumentId: 1,
    flatInstrumentId: 2,
    pattern: 'convex',
    ringCentre: null,
    unreadableCause: null,
    directions: [{ directionDeg: 0, bands: 2, bandsTyped: '2,0' }],
    viewingAngleDeg: 0,
    soakMin: null,
    temperatureC: null,
    budgetInput: noFlatnessBudgetInput,
    note: '',
    replacesId: null,
    reason: '',
  })
})

test('refuses each missing field by name', () => {
  expect(faultsOf(parseFlatnessReading({}, context))).toEqual([
    'faceId empty',
    'condition empty',
    'lampInstrumentId empty',
    'opticalFlatInstrumentId empty',
    'pattern empty',
    'readings empty',
  ])
})

test('looks at the counts where the pattern is missing, without a fault of the pattern’s making', () => {
  expect(faultsOf(parse({ pattern: '' }))).toEqual(['pattern empty'])
  const readings = [{ directionDeg: 0, bands: 'x' }]
  expect(faultsOf(parse({ pattern: 'wavy', readings }))).toEqual([
    'pattern not-a-choice',
    'readings[0].bands not-a-number',
  ])
})

test('refuses an unknown field by name', () => {
  expect(faultsOf(parse({ flatInstrumentId: 2 }))).toEqual(['flatInstrumentId unknown-field'])
})

test('knows the faces of this seal and no other component', () => {
  expect(faultsOf(parse({ faceId: 12 }))).toEqual([])
  expect(faultsOf(parse({ faceId: 13 }))).toEqual(['faceId not-known'])
  expect(faultsOf(parse({ faceId: 99 }))).toEqual(['faceId not-known'])
})

describe('count', () => {
  const withBands = (bands: unknown) => faultsOf(parse({ readings: [{ directionDeg: 0, bands }] }))

  test('may be any decimal from 0 on, since a practised eye reads tenths', () => {
    for (const bands of ['0', '0.1', '1.25', '2,37', 3, '99.75'])
      expect(withBands(bands)).toEqual([])
  })

  test('is refused where it is empty, instead of being read as zero bands', () => {
    expect(withBands('')).toEqual(['readings[0].bands empty'])
    expect(withBands(undefined)).toEqual(['readings[0].bands empty'])
  })

  test('is refused where it is negative, beyond reading, or no number', () => {
    expect(withBands('-0.25')).toEqual(['readings[0].bands below'])
    expect(withBands('100')).toEqual(['readings[0].bands above'])
    expect(withBands('2 1/4')).toEqual(['readings[0].bands not-a-number'])
    expect(withBands('1e5')).toEqual(['readings[0].bands not-a-number'])
  })

  test('names the reading in which it is faulty', () => {
    const readings = [
      { directionDeg: 0, bands: 1 },
      { directionDeg: 90, bands: 'x' },
    ]
    expect(faultsOf(parse({ readings }))).toEqual(['readings[1].bands not-a-number'])
  })
})

describe('bow over spacing', () => {
  const withBow = (reading: Input) => parse({ readings: [{ directionDeg: 90, ...reading }] })

  test('gives the bands and keeps both lengths as typed', () => {
    // Bow 4.5 mm over spacing 6.0 mm is 0.75 band: textbook rule of optical-flat reading.
    expect(accepted(withBow({ bowMm: '4.5', spacingMm: '6.0' })).directions).toEqual([
      { directionDeg: 90, bands: 0.75, bandsTyped: '4.5 mm / 6.0 mm' },
    ])
  })

  test('needs both lengths, a spacing above zero, and no count beside it', () => {
    expect(faultsOf(withBow({ bowMm: '4.5' }))).toEqual(['readings[0].spacingMm empty'])
    expect(faultsOf(withBow({ spacingMm: '6' }))).toEqual(['readings[0].bowMm empty'])
    expect(faultsOf(withBow({ bowMm: '4.5', spacingMm: '0' }))).toEqual([
      'readings[0].spacingMm below',
    ])
    expect(faultsOf(withBow({ bowMm: 4.5, spacingMm: 6, bands: 1 }))).toEqual([
      'readings[0].bands one-of-two',
    ])
    expect(faultsOf(withBow({ bowMm: 1000, spacingMm: 0.01 }))).toEqual(['readings[0].bowMm above'])
  })
})

describe('directions', () => {
  const withDirections = (...degrees: readonly unknown[]) =>
    faultsOf(parse({ readings: degrees.map((directionDeg) => ({ directionDeg, bands: 1 })) }))

  test('lie from 0 to 360 degrees and are told apart', () => {
    expect(withDirections(0, 90, 180)).toEqual([])
    expect(withDirections(0, 0)).toEqual(['readings[1].directionDeg taken'])
    expect(withDirections(0, 360)).toEqual(['readings[1].directionDeg taken'])
    expect(withDirections(361)).toEqual(['readings[0].directionDeg above'])
    expect(withDirections('')).toEqual(['readings[0].directionDeg empty'])
  })

  test('are at most eight', () => {
    expect(withDirections(...[0, 20, 40, 60, 80, 100, 120, 140])).toEqual([])
    expect(withDirections(...[0, 20, 40, 60, 80, 100, 120, 140, 160])).toEqual([
      'readings too-many',
    ])
  })

  test('are two for a saddle, which is their sum; 0 and 180 are one', () => {
    const saddle = (...degrees: number[]) =>
      faultsOf(
        parse({
          pattern: 'saddle',
          readings: degrees.map((directionDeg) => ({ directionDeg, bands: 1 })),
        }),
      )
    expect(saddle(0)).toEqual(['readings too-few'])
    expect(saddle(0, 180)).toEqual(['readings too-few'])
    expect(saddle(0, 90)).toEqual([])
  })
})

describe('straight bands', () => {
  const straight = (bands: unknown) =>
    parse({ pattern: 'straight', readings: [{ directionDeg: 0, bands }] })

  test('are zero by their pattern, with or without a count', () => {
    expect(accepted(straight('')).directions).toEqual([
      { directionDeg: 0, bands: 0, bandsTyped: '' },
    ])
    expect(faultsOf(straight('0'))).toEqual([])
  })

  test('refuse a count that contradicts them', () => {
    expect(faultsOf(straight('2'))).toEqual(['readings[0].bands above'])
  })
})

describe('unreadable face', () => {
  test('is a recorded outcome without a count', () => {
    const without = { ...least, pattern: 'unreadable', readings: undefined }
    expect(accepted(parseFlatnessReading(without, context)).directions).toEqual([])
    const blank = [
      { directionDeg: '0', bands: '' },
      { directionDeg: '90', bands: '' },
    ]
    expect(accepted(parse({ pattern: 'unreadable', readings: blank })).directions).toEqual([])
  })

  test('keeps what was counted before it was given up', () => {
    const readings = [
      { directionDeg: '0', bands: '2' },
      { directionDeg: '90', bands: '' },
    ]
    expect(accepted(parse({ pattern: 'unreadable', readings })).directions).toEqual([
      { directionDeg: 0, bands: 2, bandsTyped: '2' },
    ])
  })

  test('refuses readings that are no list', () => {
    expect(faultsOf(parse({ pattern: 'unreadable', readings: 'none' }))).toEqual([
      'readings not-a-list',
    ])
  })
})

describe('instruments', () => {
  test('are of the right kind', () => {
    expect(faultsOf(parse({ lampInstrumentId: 2, opticalFlatInstrumentId: 1 }))).toEqual([
      'lampInstrumentId wrong-instrument',
      'opticalFlatInstrumentId wrong-instrument',
    ])
  })

  test('are known, and whole ids', () => {
    expect(faultsOf(parse({ lampInstrumentId: 99 }))).toEqual(['lampInstrumentId not-known'])
    expect(faultsOf(parse({ lampInstrumentId: 'L-01' }))).toEqual(['lampInstrumentId not-a-number'])
    expect(faultsOf(parse({ lampInstrumentId: 1.5 }))).toEqual([
      'lampInstrumentId not-a-whole-number',
    ])
  })

  const withLamp = (lamp: Parameters<typeof buildInstrument>[1]) => {
    const instruments = [buildInstrument('lamp', lamp), buildInstrument('optical-flat')]
    return faultsOf(parseFlatnessReading(least, { ...context, instruments }))
  }

  test('are refused from the day they are withdrawn', () => {
    expect(withLamp({ withdrawnOn: '2026-11-25' })).toEqual([
      'lampInstrumentId withdrawn-instrument',
    ])
    expect(withLamp({ withdrawnOn: '2026-11-26' })).toEqual([])
  })

  test('are refused without a calibration that holds on the day', () => {
    expect(withLamp({ calibrations: [] })).toEqual(['lampInstrumentId never-calibrated-instrument'])
    const calibrations = [buildCalibration({ dueOn: '2026-11-24' })]
    expect(withLamp({ calibrations })).toEqual(['lampInstrumentId overdue-instrument'])
    expect(withLamp({ calibrations: [buildCalibration({ dueOn: '2026-11-25' })] })).toEqual([])
  })

  test('agree with the lamp where it is named', () => {
    expect(faultsOf(parse({ lamp: 'helium' }))).toEqual([])
    expect(faultsOf(parse({ lamp: 'sodium' }))).toEqual(['lamp wrong-instrument'])
    expect(faultsOf(parse({ lamp: 'candle' }))).toEqual(['lamp not-a-choice'])
  })
})

test('takes the budget fields of the calculator, and names what is wrong in them', () => {
  const stated = accepted(parse({ readingHalfWidthBands: '0,1', viewingAngleLimitDeg: 10 }))
  expect(stated.budgetInput).toEqual({
    ...noFlatnessBudgetInput,
    readingHalfWidthBands: 0.1,
    viewingAngleLimitDeg: 10,
  })
  expect(faultsOf(parse({ thermal: { deltaK: 'hot' } }))).toContain('thermal.deltaK not-a-number')
  expect(faultsOf(parse({ readingHalfWidthOther: '0.2' }))).toEqual([
    'readingHalfWidthOther unknown-field',
  ])
})

test('takes the wavelength of its lamp as the trade quotes it, and no other', () => {
  for (const wavelengthNm of [587.5618, 587.6, '587,56']) {
    expect(faultsOf(parse({ wavelengthNm }))).toEqual([])
  }
  expect(faultsOf(parse({ wavelengthNm: 589.3 }))).toEqual(['wavelengthNm above'])
  expect(faultsOf(parse({ wavelengthNm: 546.1 }))).toEqual(['wavelengthNm below'])
  expect(faultsOf(parse({ wavelengthNm: 'yellow' }))).toEqual(['wavelengthNm not-a-number'])
})

test('keeps which way the middle of rings stands, and only of rings', () => {
  expect(accepted(parse({ pattern: 'rings', ringCentre: 'high' })).ringCentre).toBe('high')
  expect(accepted(parse({ pattern: 'rings' })).ringCentre).toBeNull()
  expect(accepted(parse({ ringCentre: 'high' })).ringCentre).toBeNull()
  expect(faultsOf(parse({ pattern: 'rings', ringCentre: 'left' }))).toEqual([
    'ringCentre not-a-choice',
  ])
})

test('keeps why a face could not be read, and only of a face that could not', () => {
  const none = { pattern: 'unreadable', readings: undefined }
  expect(accepted(parse({ ...none, unreadableCause: 'wet' })).unreadableCause).toBe('wet')
  expect(accepted(parse(none)).unreadableCause).toBeNull()
  expect(accepted(parse({ unreadableCause: 'wet' })).unreadableCause).toBeNull()
  expect(faultsOf(parse({ ...none, unreadableCause: 'tired' }))).toEqual([
    'unreadableCause not-a-choice',
  ])
})

test('bounds viewing angle, soak and temperature', () => {
  expect(faultsOf(parse({ viewingAngleDeg: '80', soakMin: 0, temperatureC: '−200' }))).toEqual([])
  expect(faultsOf(parse({ viewingAngleDeg: '81', soakMin: -1, temperatureC: 451 }))).toEqual([
    'viewingAngleDeg above',
    'soakMin below',
    'temperatureC beyond-window',
  ])
})

test('asks a correction for its reason', () => {
  expect(faultsOf(parse({ replacesId: '7' }))).toEqual(['reason reason-needed'])
  expect(faultsOf(parse({ replacesId: '7', reason: '  ' }))).toEqual(['reason reason-needed'])
  expect(faultsOf(parse({ replacesId: '7', reason: 'x'.repeat(401) }))).toEqual(['reason too-long'])
  expect(faultsOf(parse({ replacesId: '7', reason: ['x'] }))).toEqual(['reason not-text'])
  const corrected = accepted(parse({ replacesId: '7', reason: 'wrong face' }))
  expect([corrected.replacesId, corrected.reason]).toEqual([7, 'wrong face'])
  expect(faultsOf(parse({ reason: 'no number' }))).toEqual([])
})

test('takes a temperature beyond the window once it is confirmed, and never an impossible one', () => {
  expect(faultsOf(parse({ temperatureC: 451, confirmBeyondWindow: 'yes' }))).toEqual([])
  expect(faultsOf(parse({ temperatureC: -274, confirmBeyondWindow: 'yes' }))).toEqual([
    'temperatureC below',
  ])
})
