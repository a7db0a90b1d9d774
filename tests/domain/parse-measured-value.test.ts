import { describe, expect, test } from 'vitest'
import type { Input } from '../../src/domain/fields.ts'
import { parseMeasuredValue } from '../../src/domain/parse-measured-value.ts'
import { buildInstrument } from '../support/build-instrument.ts'
import { buildSeal } from '../support/build-seal.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const { components } = buildSeal()
const face = components.find((one) => one.kind === 'rotating-face')!.id
const spring = components.find((one) => one.kind === 'spring')?.id ?? 9999
const context = {
  components,
  instruments: [
    buildInstrument('dial-indicator', { unit: 'mm', resolutionStep: 0.01 }),
    buildInstrument('lever-indicator', { unit: 'in', resolutionStep: 0.0005 }),
    buildInstrument('micrometer', { unit: 'mm', resolutionStep: 0.001 }),
    buildInstrument('profilometer'),
    buildInstrument('pressure-gauge', { unit: 'kPa', resolutionStep: 0.1 }),
  ],
  today: '2026-11-25',
}
const [dial, lever, micrometer, profilometer, gauge] = context.instruments.map((one) => one.id)

const runOut = {
  characteristic: 'shaft-run-out',
  condition: 'as-left',
  instrumentId: String(dial),
  unit: 'mm',
  readings: [{ value: '0,04' }],
}
const finish = {
  characteristic: 'roughness',
  componentId: String(face),
  condition: 'as-left',
  instrumentId: String(profilometer),
  unit: 'um',
  readings: [{ value: '0.12' }],
}
const height = {
  ...finish,
  characteristic: 'face-height',
  instrumentId: String(micrometer),
  unit: 'mm',
  readings: [{ value: '3.172' }],
}
const parse = (input: Input, changes: Input = {}) =>
  parseMeasuredValue({ ...input, ...changes }, context)

const noBudget = {
  leverAngleDeg: null,
  cutOffMm: null,
  traceDirection: null,
  tipRadiusUm: null,
  evaluationLengthMm: null,
  faceState: null,
  temperatureHalfWidthK: null,
  settingStandardUncertaintyUm: null,
}

describe('a measured value', () => {
  test('is read in µm, with the text as it was typed', () => {
    expect(accepted(parse(runOut))).toEqual({
      characteristic: 'shaft-run-out',
      componentId: null,
      condition: 'as-left',
      instrumentId: dial,
      unit: 'mm',
      readings: [{ um: 40, typed: '0,04' }],
      sizeMm: null,
      budgetInput: noBudget,
      note: '',
      replacesId: null,
      reason: '',
    })
  })

  test('is refused by the name of each field that is missing', () => {
    expect(faultsOf(parseMeasuredValue({}, context))).toEqual([
      'characteristic empty',
      'condition empty',
      'instrumentId empty',
      'unit empty',
      'readings empty',
    ])
    expect(faultsOf(parse(finish, { componentId: '' }))).toEqual(['componentId empty'])
  })

  test('knows no other field', () => {
    expect(faultsOf(parse(runOut, { size: 1 }))).toEqual(['size unknown-field'])
    expect(faultsOf(parse(runOut, { readings: [{ value: 1, unit: 'mm' }] }))).toEqual([
      'readings[0].unit unknown-field',
    ])
  })

  test('of a face names a face of the seal, of the machine names none', () => {
    expect(faultsOf(parse(finish, { componentId: spring }))).toEqual(['componentId not-known'])
    expect(faultsOf(parse(finish, { componentId: 9999 }))).toEqual(['componentId not-known'])
    expect(faultsOf(parse(runOut, { componentId: face }))).toEqual(['componentId not-here'])
  })

  test('is read with an instrument of a kind that fits', () => {
    expect(faultsOf(parse(finish, { instrumentId: dial }))).toEqual([
      'instrumentId wrong-instrument',
    ])
    expect(faultsOf(parse(runOut, { instrumentId: micrometer }))).toEqual([
      'instrumentId wrong-instrument',
    ])
    for (const instrumentId of [micrometer, dial, lever]) {
      expect(faultsOf(parse(height, { instrumentId }))).toEqual([])
    }
    expect(faultsOf(parse(runOut, { instrumentId: 9999 }))).toEqual(['instrumentId not-known'])
  })
})

describe('its readings', () => {
  test.each([
    ['um', '40', 40],
    ['mm', '0.04', 40],
    ['in', '0.0015', 38.1], // 1 in = 25.4 mm exactly
    ['uin', '1500', 38.1],
    ['graduations', '4', 40], // of 0.01 mm
  ])('are taken in %s', (unit, value, um) => {
    const [reading] = accepted(parse(runOut, { unit, readings: [{ value }] })).readings
    expect(reading?.um).toBeCloseTo(um, 10) // rounding of doubles
    expect(reading?.typed).toBe(value)
  })

  test('have graduations in the unit of the instrument', () => {
    const inches = { unit: 'graduations', instrumentId: lever, readings: [{ value: '2' }] }
    // 2 x 0.0005 in = 0.001 in = 25.4 µm; rounding of doubles.
    expect(accepted(parse(runOut, inches)).readings[0]?.um).toBeCloseTo(25.4, 10)
    const none = { unit: 'graduations', instrumentId: profilometer }
    expect(faultsOf(parse(finish, none))).toEqual(['unit no-graduation'])
    expect(faultsOf(parse(runOut, { unit: 'graduations', instrumentId: gauge }))).toEqual([
      'instrumentId wrong-instrument',
      'unit no-graduation',
    ])
  })

  test('may be one to twenty-four, all kept', () => {
    const of = (count: number) => Array.from({ length: count }, () => ({ value: 0.04 }))
    expect(accepted(parse(runOut, { readings: of(24) })).readings).toHaveLength(24)
    expect(faultsOf(parse(runOut, { readings: of(25) }))).toEqual(['readings too-many'])
    expect(faultsOf(parse(runOut, { readings: [] }))).toEqual(['readings empty'])
    expect(faultsOf(parse(runOut, { readings: '0.04' }))).toEqual(['readings not-a-list'])
  })

  test('have no sign, and are plain numbers', () => {
    const one = (value: unknown) => faultsOf(parse(runOut, { readings: [{ value }] }))
    expect(one('-0.04')).toEqual(['readings[0].value below'])
    expect(one('four')).toEqual(['readings[0].value not-a-number'])
    expect(one('')).toEqual(['readings[0].value empty'])
    expect(one('1001')).toEqual(['readings[0].value above'])
    expect(one('0')).toEqual([])
  })

  test('beyond what the trade meets are to be confirmed, told in their unit', () => {
    const far = { readings: [{ value: '5.01' }] }
    const parsed = parse(runOut, far)
    expect(parsed.ok ? [] : parsed.faults).toEqual([
      { field: 'readings[0].value', kind: 'beyond-window', with: { min: 0, max: 5 } },
    ])
    expect(faultsOf(parse(runOut, { ...far, confirmBeyondWindow: 'yes' }))).toEqual([])
    expect(faultsOf(parse(finish, { readings: [{ value: '21' }] }))).toEqual([
      'readings[0].value beyond-window',
    ])
    expect(faultsOf(parse(finish, { readings: [{ value: '20' }] }))).toEqual([])
  })
})

describe('what only the reader knows', () => {
  test('is read where it belongs', () => {
    const stated = accepted(
      parse(height, { temperatureHalfWidthK: '2', settingStandardUncertaintyUm: '0,1' }),
    )
    expect(stated.budgetInput).toEqual({
      ...noBudget,
      temperatureHalfWidthK: 2,
      settingStandardUncertaintyUm: 0.1,
    })
    expect(accepted(parse(finish, { cutOffMm: '0.25' })).budgetInput.cutOffMm).toBe(0.25)
    const traced = accepted(
      parse(finish, { traceDirection: 'radial', tipRadiusUm: '2' }),
    ).budgetInput
    expect(traced).toMatchObject({ traceDirection: 'radial', tipRadiusUm: 2 })
    expect(faultsOf(parse(runOut, { traceDirection: 'radial' }))).toEqual([
      'traceDirection not-here',
    ])
    expect(faultsOf(parse(height, { faceState: 'matted', evaluationLengthMm: 4 }))).toEqual([
      'evaluationLengthMm not-here',
      'faceState not-here',
    ])
    const told = accepted(
      parse(finish, { cutOffMm: '0.25', evaluationLengthMm: '1,25', faceState: 'matted' }),
    ).budgetInput
    expect(told).toMatchObject({ evaluationLengthMm: 1.25, faceState: 'matted' })
    const tilted = parse(runOut, { instrumentId: lever, leverAngleDeg: 15 })
    expect(accepted(tilted).budgetInput.leverAngleDeg).toBe(15)
    expect(accepted(parse(runOut, { sizeMm: '140' })).sizeMm).toBe(140)
  })

  test('is refused where it means nothing', () => {
    expect(faultsOf(parse(runOut, { leverAngleDeg: 15 }))).toEqual(['leverAngleDeg not-here'])
    expect(faultsOf(parse(runOut, { cutOffMm: 0.8 }))).toEqual(['cutOffMm not-here'])
    expect(faultsOf(parse(runOut, { temperatureHalfWidthK: 1 }))).toEqual([
      'temperatureHalfWidthK not-here',
    ])
    expect(faultsOf(parse(finish, { settingStandardUncertaintyUm: 1, sizeMm: 3 }))).toEqual([
      'sizeMm not-here',
      'settingStandardUncertaintyUm not-here',
    ])
  })

  test.each([
    ['leverAngleDeg', '61', 'above'],
    ['leverAngleDeg', '-1', 'below'],
    ['sizeMm', '0.5', 'below'],
    ['sizeMm', '5001', 'above'],
  ])('keeps to its bounds: %s %s', (name, value, kind) => {
    const input = { ...runOut, instrumentId: lever }
    expect(faultsOf(parse(input, { [name]: value }))).toEqual([`${name} ${kind}`])
  })

  test.each([
    ['cutOffMm', '0', 'below'],
    ['cutOffMm', '26', 'above'],
    ['evaluationLengthMm', '0.01', 'below'],
    ['evaluationLengthMm', '201', 'above'],
    ['faceState', 'shiny', 'not-a-choice'],
  ])('keeps to its bounds: %s %s', (name, value, kind) => {
    expect(faultsOf(parse(finish, { [name]: value }))).toEqual([`${name} ${kind}`])
  })

  test('holds one cut-off at least, where both are told', () => {
    const lengths = (cutOffMm: string, evaluationLengthMm: string) =>
      faultsOf(parse(finish, { cutOffMm, evaluationLengthMm }))
    expect(lengths('0.8', '0.79')).toEqual(['evaluationLengthMm below'])
    expect(lengths('0.8', '0.8')).toEqual([])
    expect(lengths('', '0.08')).toEqual([])
    expect(lengths('0.8', '')).toEqual([])
    expect(lengths('0.8', '0.01')).toEqual(['evaluationLengthMm below'])
  })

  test.each([
    ['temperatureHalfWidthK', '-1', 'below'],
    ['temperatureHalfWidthK', '101', 'above'],
    ['settingStandardUncertaintyUm', '-1', 'below'],
    ['settingStandardUncertaintyUm', '1001', 'above'],
  ])('keeps to its bounds: %s %s', (name, value, kind) => {
    expect(faultsOf(parse(height, { [name]: value }))).toEqual([`${name} ${kind}`])
  })
})

test('a correction says why', () => {
  expect(faultsOf(parse(runOut, { replacesId: 1 }))).toEqual(['reason reason-needed'])
  const corrected = accepted(parse(runOut, { replacesId: 1, reason: 'wrong shaft' }))
  expect(corrected).toMatchObject({ replacesId: 1, reason: 'wrong shaft' })
})
