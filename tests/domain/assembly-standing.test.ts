import { expect, test } from 'vitest'
import type { Assembly } from '../../src/domain/assembly.ts'
import { assemblyStanding } from '../../src/domain/assembly-standing.ts'
import { assemblyAsPrinted } from '../../src/domain/certified-assembly.ts'
import { buildAssembly } from '../support/build-assembly.ts'

const standing = (changes: Partial<Assembly> = {}) =>
  assemblyStanding(assemblyAsPrinted(buildAssembly(changes), { assemblies: [], springChecks: [] }))

const length = { designWorkingLengthMm: 14, workingLengthToleranceMm: 0.5 }
const load = { measuredLoad: { n: 100, typed: '100' }, loadN: 100, loadFrom: 'measured' } as const
const screw = { name: 'M6', quantityCount: 4, torqueNm: 10, designTorqueNm: 10 }
const torque = { setScrews: [screw], torqueTolerancePercent: 10 }

test('nothing is asked for where there is no design value', () => {
  expect(standing()).toBe('nothing-asked')
  expect(standing({ workingLengthToleranceMm: 0.5, ...load })).toBe('nothing-asked')
})

test('as asked for takes every value that is asked for', () => {
  expect(standing(length)).toBe('as-asked')
  const all = { ...length, ...load, designLoadN: 100, loadTolerancePercent: 5, ...torque }
  expect(standing(all)).toBe('as-asked')
  // A value that nobody asks for stands in no way.
  const unasked = { ...screw, torqueNm: 7, designTorqueNm: null }
  expect(standing({ ...all, setScrews: [screw, unasked] })).toBe('as-asked')
})

test('a value that could not be compared keeps the others from a pass', () => {
  // As records were taken before: a value asked for without a tolerance.
  expect(standing({ designWorkingLengthMm: 10 })).toBe('not-all-compared')
  const both = { designWorkingLengthMm: 10, ...load, designLoadN: 500 }
  expect(standing({ ...both, ...torque })).toBe('not-all-compared')
  const notKnown = { ...length, designLoadN: 100, loadTolerancePercent: 5 }
  expect(standing(notKnown)).toBe('not-all-compared')
  expect(standing({ ...torque, setScrews: [screw, { ...screw, torqueNm: null }] })).toBe(
    'not-all-compared',
  )
})

test('what is beyond is amiss, whatever else could be compared or not', () => {
  expect(standing({ ...length, designWorkingLengthMm: 10 })).toBe('amiss')
  expect(standing({ designWorkingLengthMm: 10, isTurningFree: false })).toBe('amiss')
})
