import { expect, test } from 'vitest'
import { accuracyOf } from '../../src/domain/accuracy-of.ts'
import { instrumentUnits } from '../../src/domain/instrument.ts'
import { basePerInstrumentUnit, baseUnits } from '../../src/domain/instrument-unit.ts'
import { buildCalibration, buildInstrument } from '../support/build-instrument.ts'

const older = buildCalibration({ calibratedOn: '2025-01-10', expandedUncertainty: 0.6 })
const newer = buildCalibration({
  calibratedOn: '2026-01-15',
  expandedUncertainty: 0.4,
  coverageFactor: 2.5,
})
const stated = { unit: 'kPa', largestError: 0.3, resolutionStep: 0.1 } as const

test('the calibration in force on the day goes first, with its own factor or with two', () => {
  const gauge = buildInstrument('pressure-gauge', { ...stated, calibrations: [older, newer] })
  expect(accuracyOf(gauge, '2026-11-25')).toEqual({
    standardUncertainty: 0.16, // 0.4 / 2.5, exact in doubles as written
    distribution: 'normal',
    largestError: null,
    resolutionStep: 0.1,
  })
  expect(accuracyOf(gauge, '2025-06-01').standardUncertainty).toBe(0.3)
})

test('without a stated uncertainty the largest error is a rectangular one, by root three', () => {
  // JCGM 100:2008, 4.3.7: a half width a of equal chance has the standard uncertainty a / sqrt 3.
  const known = accuracyOf(buildInstrument('pressure-gauge', stated), '2026-11-25')
  expect(known.standardUncertainty).toBeCloseTo(0.173_205_08, 8) // eight decimals are written here
  expect(known).toMatchObject({ distribution: 'rectangular', largestError: 0.3 })
  const early = buildInstrument('pressure-gauge', { ...stated, calibrations: [newer] })
  expect(accuracyOf(early, '2025-06-01').distribution).toBe('rectangular')
})

test('an instrument that says nothing is not taken as exact', () => {
  expect(accuracyOf(buildInstrument('pressure-gauge'), '2026-11-25')).toEqual({
    standardUncertainty: null,
    distribution: 'rectangular',
    largestError: null,
    resolutionStep: null,
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
