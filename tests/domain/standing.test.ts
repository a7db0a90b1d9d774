import { expect, test } from 'vitest'
import { combineWholeFaces } from '../../src/domain/combine-whole-faces.ts'
import { currentOnly } from '../../src/domain/current-only.ts'
import type { FlatnessReading } from '../../src/domain/flatness.ts'
import { standingReadings, standingTests } from '../../src/domain/standing.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'
import { buildStaticTest } from '../support/build-static-test.ts'
import { madeSurface, madeWholeReading } from './made-whole-reading.ts'

const ids = (records: readonly { readonly id: number }[]) => records.map((one) => one.id)

test('current records are those that no correction replaced', () => {
  const records = [
    buildFlatnessReading({ id: 1, replacedById: 3 }),
    buildFlatnessReading({ id: 2 }),
    buildFlatnessReading({ id: 3, replacesId: 1, reason: 'wrong lamp' }),
  ]
  expect(ids(currentOnly(records))).toEqual([2, 3])
})

test('the newest reading of each face and condition stands', () => {
  const records = [
    buildFlatnessReading({ id: 1, condition: 'as-found' }),
    buildFlatnessReading({ id: 2 }),
    buildFlatnessReading({ id: 3, componentId: 12, faceKind: 'stationary-seat' }),
    buildFlatnessReading({ id: 4 }),
  ]
  expect(ids(standingReadings({ flatnessReadings: records, lapCycles: [] }))).toEqual([1, 3, 4])
})

test('a replaced reading does not stand, even as the newest', () => {
  const records = [
    buildFlatnessReading({ id: 1 }),
    buildFlatnessReading({ id: 2, replacedById: 9 }),
  ]
  expect(ids(standingReadings({ flatnessReadings: records, lapCycles: [] }))).toEqual([1])
})

const whole = { sees: 'whole-surface', method: 'flatness/photo 1' } as const
const at = (hour: number) => ({ recordedAt: `2026-11-24T${hour}:00:00.000Z` })

test('a count of lines does not overtake a reading of the whole face', () => {
  const records = [
    buildFlatnessReading({ id: 1, ...at(10) }),
    buildFlatnessReading({ id: 2, ...whole, ...at(11) }),
    buildFlatnessReading({ id: 3, ...at(12) }),
  ]
  expect(ids(standingReadings({ flatnessReadings: records, lapCycles: [] }))).toEqual([2, 3])
})

test('a whole face that was lapped and then counted no longer speaks', () => {
  const records = [
    buildFlatnessReading({ id: 1, ...whole, ...at(10) }),
    buildFlatnessReading({ id: 2, ...at(12) }),
  ]
  const lapCycles = [buildLapCycle({ id: 1, componentId: 11, ...at(11) })]
  expect(ids(standingReadings({ flatnessReadings: records, lapCycles }))).toEqual([2])
})

test('a whole face that was only matted before it was counted goes on speaking', () => {
  const records = [
    buildFlatnessReading({ id: 1, ...whole, ...at(10) }),
    buildFlatnessReading({ id: 2, ...at(12) }),
  ]
  const matting = buildLapCycle({ id: 1, componentId: 11, purpose: 'matt', ...at(11) })
  expect(ids(standingReadings({ flatnessReadings: records, lapCycles: [matting] }))).toEqual([1, 2])
})

test('a newer reading of the whole face overtakes all before it', () => {
  const records = [
    buildFlatnessReading({ id: 1, ...whole, ...at(10) }),
    buildFlatnessReading({ id: 2, ...at(11) }),
    buildFlatnessReading({ id: 3, ...whole, ...at(12) }),
  ]
  expect(ids(standingReadings({ flatnessReadings: records, lapCycles: [] }))).toEqual([3])
})

test('the newest test of each section stands', () => {
  const records = [
    buildStaticTest({ id: 1 }),
    buildStaticTest({ id: 2, section: 'inboard' }),
    buildStaticTest({ id: 3 }),
    buildStaticTest({ id: 4, section: 'inboard', replacedById: 5 }),
  ]
  expect(ids(standingTests(records))).toEqual([2, 3])
})

test('a combination falls with any of its parts', () => {
  const first = madeWholeReading(1, madeSurface(2))
  const second = madeWholeReading(2, madeSurface(2))
  const { wholeFace } = combineWholeFaces([first, second])
  const combined = { ...second, id: 3, wholeFace }
  const of = (flatnessReadings: readonly FlatnessReading[]) =>
    ids(standingReadings({ flatnessReadings, lapCycles: [] }))
  expect(of([first, second, combined])).toEqual([3])
  expect(of([{ ...first, replacedById: 9 }, second, combined])).toEqual([2])
})
