import { expect, test } from 'vitest'
import type { LapCycle } from '../../src/domain/lap-cycle.ts'
import { lappedBetween } from '../../src/domain/lapped-between.ts'
import { pairToCompare, wholeReadings } from '../../src/domain/pair-to-compare.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'
import { madeSurface, madeWholeReading } from './made-whole-reading.ts'

const at = (hour: number) => ({ recordedAt: `2026-11-24T${hour}:00:00.000Z` })
const found = buildFlatnessReading({ id: 1, condition: 'as-found', ...at(9) })
const left = buildFlatnessReading({ id: 2, ...at(14) })
const between = (lapCycles: readonly LapCycle[]) =>
  lappedBetween(found, left, { flatnessReadings: [found, left], lapCycles, measuredValues: [] })

test('between two readings the stock of the cycles adds up, heights before words', () => {
  const heights = { heightBeforeMm: 3.2, heightAfterMm: 3.19, stockUm: 4 }
  const cycles = [
    buildLapCycle({ id: 1, ...heights, ...at(10) }),
    buildLapCycle({ id: 2, stockUm: 3, ...at(11) }),
    buildLapCycle({ id: 3, stockUm: 50, ...at(15) }),
    buildLapCycle({ id: 4, stockUm: 50, componentId: 12, ...at(12) }),
  ]
  expect(between(cycles)).toEqual({ cycleCount: 2, removedUm: 13, isNewRing: false })
})

test('nothing is said of stock where one cycle is silent, or there was none', () => {
  const silent = [
    buildLapCycle({ id: 1, stockUm: 3, ...at(10) }),
    buildLapCycle({ id: 2, ...at(11) }),
  ]
  expect(between(silent)).toMatchObject({ cycleCount: 2, removedUm: null })
  expect(between([])).toEqual({ cycleCount: 0, removedUm: null, isNewRing: false })
})

test('matting is no lap between two readings', () => {
  const lapCycles = [
    buildLapCycle({ id: 1, stockUm: 3, ...at(10) }),
    buildLapCycle({ id: 2, purpose: 'matt', ...at(11) }),
  ]
  expect(between(lapCycles)).toEqual({ cycleCount: 1, removedUm: 3, isNewRing: false })
  expect(between(lapCycles.slice(1))).toMatchObject({ cycleCount: 0, removedUm: null })
})

test('a ring that was fitted new between them is told', () => {
  expect(between([buildLapCycle({ isNewRing: true, ...at(10) })]).isNewRing).toBe(true)
})

test('the last as found is looked at beside the last as left, else the last two', () => {
  const whole = (
    id: number,
    condition: 'as-found' | 'as-left',
    replacedById: number | null = null,
  ) => madeWholeReading(id, madeSurface(2), { reading: { condition, replacedById } })
  const ids = (all: Parameters<typeof wholeReadings>[0]) =>
    pairToCompare(wholeReadings(all))?.map((one) => one.id) ?? null
  expect(ids([whole(1, 'as-found'), whole(2, 'as-left'), whole(3, 'as-left')])).toEqual([1, 3])
  expect(ids([whole(1, 'as-left'), whole(2, 'as-left'), whole(3, 'as-left')])).toEqual([2, 3])
  expect(ids([whole(1, 'as-found'), whole(2, 'as-left', 3), whole(3, 'as-found')])).toEqual([1, 3])
  expect(ids([whole(1, 'as-left'), buildFlatnessReading({ id: 2 })])).toBeNull()
})
