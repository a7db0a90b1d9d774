import { describe, expect, test } from 'vitest'
import type { Input } from '../../src/domain/fields.ts'
import { parseStaticTestForm } from '../../src/domain/parse-static-test-form.ts'
import { noStaticTestBudgetInput } from '../../src/domain/static-test.ts'
import { buildInstrument, buildInstruments } from '../support/build-instrument.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const context = {
  instruments: buildInstruments(),
  receivedAt: '2026-11-01T14:00:00.000Z',
  now: '2026-11-25T10:00:00.000Z',
}
const least = {
  section: 'whole',
  startPressure: '170',
  endPressure: '165',
  pressureUnit: 'kPa',
  pressureReference: 'gauge',
  startTemperatureC: '20',
  endTemperatureC: '20.5',
  startedAt: '2026-11-25T09:00',
  durationMin: '5',
  volumeL: '2',
  gaugeInstrumentId: '3',
}
const parse = (changes: Input = {}) => parseStaticTestForm({ ...least, ...changes }, context)

test('reads the least test: gauge pressures over the standard barometer, and as typed', () => {
  expect(accepted(parse())).toEqual({
    section: 'whole',
    typed: {
      startPressure: '170',
      endPressure: '165',
      pressureUnit: 'kPa',
      pressureReference: 'gauge',
      barometer: '',
    },
    startPressureKPaAbs: 271.325,
    endPressureKPaAbs: 266.325,
    barometerKPa: 101.325,
    startTemperatureC: 20,
    endTemperatureC: 20.5,
    referenceTemperatureC: 20,
    durationS: 300,
    startedAt: '2026-11-25T09:00:00.000Z',
    volumeL: 2,
    stabilisationS: null,
    leakPlace: null,
    expansion: null,
    gaugeInstrumentId: 3,
    thermometerInstrumentId: null,
    volumeInstrumentId: null,
    budgetInput: noStaticTestBudgetInput,
    note: '',
    replacesId: null,
    reason: '',
  })
})

test('refuses each missing field by name', () => {
  expect(faultsOf(parseStaticTestForm({}, context))).toEqual([
    'section empty',
    'pressureUnit empty',
    'pressureReference empty',
    'startPressure empty',
    'endPressure empty',
    'startTemperatureC empty',
    'endTemperatureC empty',
    'durationS empty',
    'volumeL empty',
    'gaugeInstrumentId empty',
  ])
})

test('refuses an unknown field by name', () => {
  expect(faultsOf(parse({ pressure: 1 }))).toEqual(['pressure unknown-field'])
})

describe('pressures', () => {
  test('are read in the unit and reference of the gauge', () => {
    // 25 psi = 172.36893 kPa: 1 psi = 6.894757293 kPa (0.45359237 kg x 9.80665 m/s2 / (25.4 mm)2).
    const psi = accepted(parse({ startPressure: '25', endPressure: '24,5', pressureUnit: 'psi' }))
    expect(psi.startPressureKPaAbs).toBeCloseTo(273.69393, 4) // digits of the quoted factor
    expect(psi.typed.endPressure).toBe('24,5')
    const bar = accepted(
      parse({
        startPressure: '2.7',
        pressureUnit: 'bar',
        pressureReference: 'absolute',
        endPressure: '2.6',
      }),
    )
    expect(bar.startPressureKPaAbs).toBeCloseTo(270, 10) // rounding of doubles
  })

  test('take the barometer that was read', () => {
    const read = accepted(parse({ barometerKPa: '99.8' }))
    expect(read.startPressureKPaAbs).toBeCloseTo(269.8, 10) // rounding of doubles
    expect([read.barometerKPa, read.typed.barometer]).toEqual([99.8, '99.8'])
    expect(faultsOf(parse({ barometerKPa: '59' }))).toEqual(['barometerKPa below'])
  })

  test('may rise: a negative drop is a result', () => {
    expect(faultsOf(parse({ endPressure: '171' }))).toEqual([])
  })

  test('go down to full vacuum and not below it', () => {
    const vacuum = { startPressure: '-1.01325', endPressure: '-1', pressureUnit: 'bar' }
    expect(accepted(parse(vacuum)).startPressureKPaAbs).toBeCloseTo(0, 10) // rounding of doubles
    expect(accepted(parse(vacuum)).startPressureKPaAbs).toBeGreaterThanOrEqual(0)
    const rounded = { ...vacuum, startPressure: '-1.0133' }
    expect(accepted(parse(rounded)).startPressureKPaAbs).toBe(0)
    expect(faultsOf(parse({ startPressure: '-102' }))).toEqual(['startPressure below'])
    const below = parse({ startPressure: '-1', pressureReference: 'absolute' })
    expect(faultsOf(below)).toEqual(['startPressure below'])
  })

  test('tell their bounds in the unit and reference of the field', () => {
    const parsed = parse({ endPressure: '-2', startPressure: '1', pressureUnit: 'bar' })
    expect(parsed.ok ? [] : parsed.faults).toEqual([
      { field: 'endPressure', kind: 'below', with: { min: -1.0133, max: 998.9868 } },
    ])
  })

  test('are still looked at where their unit is missing', () => {
    expect(faultsOf(parse({ pressureUnit: '', startPressure: 'x' }))).toEqual([
      'pressureUnit empty',
      'startPressure not-a-number',
    ])
  })
})

describe('temperatures', () => {
  test('are taken within the window of the trade, and beyond it where they are confirmed', () => {
    expect(faultsOf(parse({ startTemperatureC: '-200', endTemperatureC: '450' }))).toEqual([])
    const beyond = { startTemperatureC: '-201', endTemperatureC: '451' }
    expect(faultsOf(parse(beyond))).toEqual([
      'startTemperatureC beyond-window',
      'endTemperatureC beyond-window',
    ])
    expect(faultsOf(parse({ ...beyond, confirmBeyondWindow: 'yes' }))).toEqual([])
  })

  test('near absolute zero are refused, and below it called so', () => {
    const near = { startTemperatureC: '-273', confirmBeyondWindow: 'yes' }
    expect(faultsOf(parse(near))).toEqual(['startTemperatureC below'])
    expect(faultsOf(parse({ endTemperatureC: '-273.16' }))).toEqual([
      'endTemperatureC below-absolute-zero',
    ])
    expect(faultsOf(parse({ endTemperatureC: '-273.16', confirmBeyondWindow: 'yes' }))).toEqual([
      'endTemperatureC below-absolute-zero',
    ])
  })
})

describe('duration', () => {
  const lasting = (durationMin: unknown, durationS: unknown) =>
    parse({ durationMin, durationS, startedAt: '2026-11-01T09:00' })

  test('is minutes, seconds or both', () => {
    expect(accepted(lasting('5', '30')).durationS).toBe(330)
    expect(accepted(lasting('', '90')).durationS).toBe(90)
    expect(accepted(lasting('2,5', '')).durationS).toBe(150)
  })

  test('is at least a second and at most a week', () => {
    expect(faultsOf(lasting('', '0'))).toEqual(['durationS below'])
    expect(faultsOf(lasting('0', ''))).toEqual(['durationMin below'])
    expect(faultsOf(lasting('10080', ''))).toEqual([])
    expect(faultsOf(lasting('10080', '1'))).toEqual(['durationS above'])
    expect(faultsOf(lasting('-1', '90'))).toEqual(['durationMin below'])
  })
})

test('takes a hold without a start to have ended as it is recorded', () => {
  const parsed = parse({ startedAt: '' })
  // Five minutes before ten o'clock, the instant of recording.
  expect(parsed.ok && parsed.value.startedAt).toBe('2026-11-25T09:55:00.000Z')
})

test('refuses a hold that begins, or is still going on, when it is recorded', () => {
  // Five minutes from 9:55 end at 10:00, the instant of recording.
  expect(faultsOf(parse({ startedAt: '2026-11-25T09:55:00Z' }))).toEqual([])
  expect(faultsOf(parse({ startedAt: '2026-11-25T09:55:01Z' }))).toEqual(['startedAt above'])
  expect(faultsOf(parse({ startedAt: '2026-11-25T10:00:00Z' }))).toEqual(['startedAt above'])
  expect(faultsOf(parse({ startedAt: '2026-11-25T10:01' }))).toEqual(['startedAt above'])
  expect(faultsOf(parse({ startedAt: '2026-11-31T10:01' }))).toEqual(['startedAt not-a-date'])
  // The day of receipt is enough: nobody writes a receipt to the minute.
  expect(faultsOf(parse({ startedAt: '2026-11-01T00:00Z' }))).toEqual([])
  expect(faultsOf(parse({ startedAt: '2026-10-31T23:59Z' }))).toEqual(['startedAt below'])
  expect(faultsOf(parse({ startedAt: '1999-01-01T00:00' }))).toEqual(['startedAt below'])
})

test('bounds volume and stabilisation', () => {
  expect(faultsOf(parse({ volumeL: '0' }))).toEqual(['volumeL below'])
  expect(faultsOf(parse({ volumeL: '10001' }))).toEqual(['volumeL above'])
  expect(faultsOf(parse({ stabilisationS: '-1' }))).toEqual(['stabilisationS below'])
  expect(accepted(parse({ stabilisationS: '120' })).stabilisationS).toBe(120)
  expect(accepted(parse({ leakPlace: 'at-shaft' })).leakPlace).toBe('at-shaft')
  expect(faultsOf(parse({ leakPlace: 'attic' }))).toEqual(['leakPlace not-a-choice'])
})

describe('instruments', () => {
  test('are a gauge and, where there was one, a thermometer', () => {
    expect(accepted(parse({ thermometerInstrumentId: 4 })).thermometerInstrumentId).toBe(4)
    const swapped = parse({ gaugeInstrumentId: 4, thermometerInstrumentId: 3 })
    expect(faultsOf(swapped)).toEqual([
      'gaugeInstrumentId wrong-instrument',
      'thermometerInstrumentId wrong-instrument',
    ])
  })

  test('are judged on the day that the hold began', () => {
    const gauge = buildInstrument('pressure-gauge', { withdrawnOn: '2026-11-24' })
    const withGauge = (startedAt: string) =>
      faultsOf(parseStaticTestForm({ ...least, startedAt }, { ...context, instruments: [gauge] }))
    expect(withGauge('2026-11-24T09:00')).toEqual(['gaugeInstrumentId withdrawn-instrument'])
    expect(withGauge('2026-11-23T09:00')).toEqual([])
  })
})

test('asks a correction for its reason', () => {
  expect(faultsOf(parse({ replacesId: 4 }))).toEqual(['reason reason-needed'])
  expect(accepted(parse({ replacesId: 4, reason: 'wrong volume' })).replacesId).toBe(4)
})

test('asks to confirm a pressure above the 45 MPa of the window, in the unit of the gauge', () => {
  const high = { startPressure: '451', endPressure: '450', pressureUnit: 'bar' }
  const asked = parse(high)
  expect(faultsOf(asked)).toEqual(['startPressure beyond-window'])
  expect(!asked.ok && asked.faults[0]?.with).toMatchObject({ max: 450 })
  expect(faultsOf(parse({ ...high, confirmBeyondWindow: 'yes' }))).toEqual([])
})
