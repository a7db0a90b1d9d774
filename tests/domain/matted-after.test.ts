import { expect, test } from 'vitest'
import { mattedAfter } from '../../src/domain/matted-after.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'

const at = (hour: number) => ({ recordedAt: `2026-11-24T${hour}:00:00.000Z` })
const reading = buildFlatnessReading({ id: 1, componentId: 11, ...at(12) })
const matting = (hour: number) =>
  buildLapCycle({ id: 1, componentId: 11, purpose: 'matt', ...at(hour) })
const after = (...cycles: readonly ReturnType<typeof buildLapCycle>[]) =>
  mattedAfter(reading, { readings: [reading], cycles })

test('a face that was matted after its flatness was read says when', () => {
  expect(after(matting(13))).toBe(at(13).recordedAt)
  expect(after(matting(11))).toBeNull()
  expect(after(matting(12))).toBeNull()
  expect(after()).toBeNull()
})

test('a matting that was lapped away is not told, nor one of another face', () => {
  expect(after(matting(13), buildLapCycle({ id: 2, componentId: 11, ...at(14) }))).toBeNull()
  expect(after({ ...matting(13), componentId: 12 })).toBeNull()
})

test('a reading as found tells of the face as it came', () => {
  const found = { ...reading, condition: 'as-found' } as const
  expect(mattedAfter(found, { readings: [found], cycles: [matting(13)] })).toBeNull()
})

test('a correction stands where what it replaced stood', () => {
  const was = { ...reading, replacedById: 2 }
  const is = { ...reading, id: 2, replacesId: 1, reason: 'wrong lamp', ...at(15) }
  expect(mattedAfter(is, { readings: [was, is], cycles: [matting(13)] })).toBe(at(13).recordedAt)
})
