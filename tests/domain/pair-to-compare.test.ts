import { expect, test } from 'vitest'
import { pairToCompare, wholeReadings } from '../../src/domain/pair-to-compare.ts'
import { madeSurface, madeWholeReading } from './made-whole-reading.ts'

const at = (hour: number) => ({ recordedAt: `2026-11-24T${hour}:00:00.000Z` })
const read = (id: number, hour: number, changes: object = {}) =>
  madeWholeReading(id, madeSurface(2), { reading: { ...at(hour), ...changes } })

test('a corrected reading keeps its place among the others', () => {
  const readings = [
    read(1, 10, { condition: 'as-found', replacedById: 3 }),
    read(2, 12),
    read(3, 14, { condition: 'as-found', replacesId: 1, reason: 'wrong lamp' }),
    read(4, 13),
    read(5, 15, { replacesId: 2, reason: 'edges' }),
  ].map((one) => (one.id === 2 ? { ...one, replacedById: 5 } : one))
  expect(wholeReadings(readings).map((one) => one.id)).toEqual([3, 5, 4])
  expect(pairToCompare(wholeReadings(readings))?.map((one) => one.id)).toEqual([3, 4])
})
