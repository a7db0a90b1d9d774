import { describe, expect, test } from 'vitest'
import { parseReceipt } from '../../src/domain/parse-receipt.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

test('reads an empty receipt as nothing stated', () => {
  expect(accepted(parseReceipt({}))).toEqual({
    customerOrder: '',
    service: 'not-stated',
    statedRule: null,
    reasonForRemoval: '',
    decontamination: 'not-stated',
    lastFluid: '',
    sealedPressureKPa: null,
    serviceTemperatureC: null,
    shaftSpeedPerMin: null,
    dueOn: null,
    limitSetId: null,
  })
})

test('refuses a decontamination state that is none, a due day that is none, a set that is none', () => {
  const input = { decontamination: 'clean', dueOn: '2026-02-30', limitSetId: '0' }
  expect(faultsOf(parseReceipt(input))).toEqual([
    'decontamination not-a-choice',
    'dueOn not-a-date',
    'limitSetId below',
  ])
})

describe('service data', () => {
  const confirmed = { confirmBeyondWindow: 'yes' }

  test('are accepted over the window of the trade', () => {
    const low = {
      sealedPressureKPa: '-101.325',
      serviceTemperatureC: '−200',
      shaftSpeedPerMin: '0',
    }
    const high = { sealedPressureKPa: 45_000, serviceTemperatureC: 450, shaftSpeedPerMin: 3600 }
    expect(faultsOf(parseReceipt(low))).toEqual([])
    expect(faultsOf(parseReceipt(high))).toEqual([])
  })

  test('are asked about beyond it, and stand once confirmed', () => {
    const beyond = { sealedPressureKPa: 45_001, serviceTemperatureC: -201 }
    expect(faultsOf(parseReceipt(beyond))).toEqual([
      'sealedPressureKPa beyond-window',
      'serviceTemperatureC beyond-window',
    ])
    expect(faultsOf(parseReceipt({ ...beyond, ...confirmed }))).toEqual([])
  })

  test('are refused where they are impossible, confirmed or not', () => {
    const impossible = { sealedPressureKPa: -200, serviceTemperatureC: -274, shaftSpeedPerMin: -1 }
    expect(faultsOf(parseReceipt({ ...impossible, ...confirmed }))).toEqual([
      'sealedPressureKPa below',
      'serviceTemperatureC below',
      'shaftSpeedPerMin below',
    ])
  })
})

describe('shaft speed', () => {
  // v = pi d n / 60: 150 m/s on 500 mm is 150 x 60 / (pi x 0.5) = 5729.58 per minute.
  const at = (shaftSpeedPerMin: number, shaftDiameterMm: number | null, confirm = '') =>
    parseReceipt({ shaftSpeedPerMin, confirmBeyondWindow: confirm }, { shaftDiameterMm })

  test('is held against 150 m/s at the surface of the shaft', () => {
    expect(faultsOf(at(5729, 500))).toEqual([])
    expect(faultsOf(at(5730, 500))).toEqual(['shaftSpeedPerMin beyond-window'])
  })

  test('tells the window in revolutions for this shaft', () => {
    const parsed = at(5730, 500)
    expect(parsed.ok ? [] : parsed.faults[0]?.with).toEqual({ min: 0, max: 5729 })
  })

  test('stands once confirmed, and is not judged without a diameter', () => {
    expect(faultsOf(at(9000, 500, 'yes'))).toEqual([])
    expect(faultsOf(at(90_000, null))).toEqual([])
    expect(faultsOf(parseReceipt({ shaftSpeedPerMin: 90_000 }))).toEqual([])
  })
})
