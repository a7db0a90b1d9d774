import { describe, expect, test } from 'vitest'
import { accuracyOf } from '../../src/domain/accuracy-of.ts'
import { flatAccuracy } from '../../src/domain/flat-accuracy.ts'
import { type Calibration, type Instrument, instrumentUnits } from '../../src/domain/instrument.ts'
import { basePerInstrumentUnit, baseUnits } from '../../src/domain/instrument-unit.ts'
import { buildCalibration, buildInstrument } from '../support/build-instrument.ts'

const older = buildCalibration({ calibratedOn: '2025-01-10', expandedUncertainty: 0.6 })
const newer = buildCalibration({
  calibratedOn: '2026-01-15',
  expandedUncertainty: 0.4,
  coverageFactor: 2.5,
})
const stated = { unit: 'kPa', largestError: 0.3, resolutionStep: 0.1 } as const

const gaugeWith = (...calibrations: readonly Calibration[]) =>
  buildInstrument('pressure-gauge', { ...stated, calibrations })

test('the calibration in force on the day says how well the error is known, k its own or two', () => {
  const gauge = gaugeWith(older, newer)
  expect(accuracyOf(gauge, '2026-11-25')).toEqual({
    standardUncertainty: 0.16, // 0.4 / 2.5, exact in doubles as written
    errorHalfWidth: 0.3,
    resolutionStep: 0.1,
  })
  expect(accuracyOf(gauge, '2025-06-01').standardUncertainty).toBe(0.3)
})

test('an error found beside its uncertainty takes the place of the largest permissible one', () => {
  const known = gaugeWith(buildCalibration({ expandedUncertainty: 0.4, asLeftError: -0.2 }))
  expect(accuracyOf(known, '2026-11-25')).toMatchObject({
    standardUncertainty: 0.2,
    errorHalfWidth: 0.2, // to either side, whatever its sign
  })
  const none = gaugeWith(buildCalibration({ expandedUncertainty: 0.4, asLeftError: 0 }))
  expect(accuracyOf(none, '2026-11-25').errorHalfWidth).toBe(0)
})

test('the error as found counts where nothing says how it was left, and not where it does', () => {
  const found = { expandedUncertainty: 0.4, asFoundError: 0.25 } as const
  const untouched = gaugeWith(buildCalibration({ ...found, asFound: 'within' }))
  expect(accuracyOf(untouched, '2026-11-25').errorHalfWidth).toBe(0.25)
  const adjusted = gaugeWith(buildCalibration({ ...found, asFound: 'beyond', asLeft: 'within' }))
  expect(accuracyOf(adjusted, '2026-11-25').errorHalfWidth).toBe(0.3)
})

test('an error without an uncertainty makes the largest permissible one no smaller', () => {
  const bare = gaugeWith(buildCalibration({ asLeftError: 0.1, asLeft: 'within' }))
  expect(accuracyOf(bare, '2026-11-25')).toMatchObject({
    standardUncertainty: null,
    errorHalfWidth: 0.3,
  })
})

test('an error without an uncertainty counts where it is larger than the permissible one', () => {
  // Permitted less since, by an amendment: what the calibration found is not forgotten.
  const amended = gaugeWith(buildCalibration({ asFoundError: -0.5, asFound: 'within' }))
  expect(accuracyOf(amended, '2026-11-25').errorHalfWidth).toBe(0.5)
})

test('one that was left beyond may be further off than is permitted: by its error, or unknown', () => {
  const left = { asFound: 'beyond', asLeft: 'beyond' } as const
  const errorOf = (changes: Partial<Calibration>) =>
    accuracyOf(gaugeWith(buildCalibration({ ...left, ...changes })), '2026-11-25').errorHalfWidth
  expect(errorOf({})).toBeNull()
  expect(errorOf({ expandedUncertainty: 0.4 })).toBeNull()
  expect(errorOf({ asLeftError: 0.7 })).toBe(0.7)
  expect(errorOf({ asLeftError: -0.7, expandedUncertainty: 0.4 })).toBe(0.7)
  // Beyond at some place, and this is said of another: no smaller than permitted.
  expect(errorOf({ asLeftError: 0.1 })).toBe(0.3)
})

test('without a stated uncertainty the largest error is what is known', () => {
  const known = { standardUncertainty: null, errorHalfWidth: 0.3, resolutionStep: 0.1 }
  expect(accuracyOf(buildInstrument('pressure-gauge', stated), '2026-11-25')).toEqual(known)
  expect(accuracyOf(gaugeWith(newer), '2025-06-01')).toEqual(known)
})

test('an instrument that says nothing is not taken as exact', () => {
  expect(accuracyOf(buildInstrument('pressure-gauge'), '2026-11-25')).toEqual({
    standardUncertainty: null,
    errorHalfWidth: null,
    resolutionStep: null,
  })
})

describe('an optical flat', () => {
  const flatWith = (changes: Partial<Calibration>, more: Partial<Instrument> = {}) =>
    flatAccuracy(
      buildInstrument('optical-flat', { ...more, calibrations: [buildCalibration(changes)] }),
      '2026-11-25',
    )

  test('may depart by its tolerance, beside what its calibration leaves open', () => {
    expect(flatWith({})).toEqual({ flatToleranceUm: 0.05, flatStandardUncertaintyUm: null })
    const known = flatWith({ expandedUncertainty: 0.015 })
    expect(known.flatToleranceUm).toBe(0.05)
    expect(known.flatStandardUncertaintyUm).toBeCloseTo(0.0075, 15) // rounding of doubles
  })

  test('may depart by what was found, where its uncertainty stands beside it', () => {
    const found = { expandedUncertainty: 0.015, asLeftError: 0.03 }
    expect(flatWith(found).flatToleranceUm).toBe(0.03)
    expect(flatWith(found, { unit: 'mm' }).flatToleranceUm).toBeCloseTo(30, 12) // rounding
  })

  test('is not known where it was left beyond, and says nothing in a unit of something else', () => {
    expect(flatWith({ asLeft: 'beyond' }).flatToleranceUm).toBeNull()
    expect(flatWith({ expandedUncertainty: 0.015 }, { unit: 'kPa' })).toEqual({
      flatToleranceUm: 0.05,
      flatStandardUncertaintyUm: null,
    })
  })
})

test.each([
  ['in', 'um', 25_400],
  ['mm', 'um', 1000],
  ['kPa', 'Pa', 1000],
  ['bar', 'Pa', 100_000],
  ['C', 'K', 1],
  ['L', 'L', 1],
] as const)('one %s is so many %s: %d', (unit, base, factor) => {
  expect(basePerInstrumentUnit({ unit }, base)).toBe(factor)
})

test('a pound on a square inch is 6894.757 Pa (NIST SP 811, appendix B.8)', () => {
  // six decimals of the published 6.894 757 E+03
  expect(basePerInstrumentUnit({ unit: 'psi' }, 'Pa')).toBeCloseTo(6894.757, 3)
})

test('every unit has one quantity, and says nothing of another', () => {
  for (const unit of instrumentUnits) {
    const known = baseUnits.filter((base) => basePerInstrumentUnit({ unit }, base) !== null)
    expect(known).toHaveLength(1)
  }
  expect(basePerInstrumentUnit({ unit: '' }, 'um')).toBeNull()
  expect(basePerInstrumentUnit(undefined, 'um')).toBeNull()
})
