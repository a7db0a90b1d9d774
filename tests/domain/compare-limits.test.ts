import { describe, expect, test } from 'vitest'
import { compareLimits } from '../../src/domain/compare-limits.ts'
import { buildLimit, buildLimitSet } from '../support/build-limit-set.ts'

const endPlay = (upper: number, changes = {}) =>
  buildLimit({ characteristic: 'end-play', upper, ...changes })
const setOf = (...limits: ReturnType<typeof buildLimit>[]) => buildLimitSet({ limits })
const kinds = (...sets: ReturnType<typeof setOf>[]) =>
  compareLimits(sets).map(({ characteristic, kind, ratio }) => [characteristic, kind, ratio])

describe('limits side by side', () => {
  test('differ by a factor of five, where 0.25 mm and 0.05 mm of end play are published', () => {
    expect(kinds(setOf(endPlay(250)), setOf(endPlay(50)), setOf())).toEqual([
      ['end-play', 'differs', 5],
    ])
  })

  test('are the same where one figure is written in two units', () => {
    // 3 helium bands and 34.8 µin, 0.3 % apart.
    expect(
      kinds(setOf(buildLimit({ upper: 0.8813 })), setOf(buildLimit({ upper: 0.8839 }))),
    ).toEqual([['flatness', 'same', null]])
  })

  test('stand in one row only where they hold for the same', () => {
    const carbon = buildLimit({ faceMaterial: 'carbon-graphite' })
    expect(kinds(setOf(carbon), setOf(buildLimit()))).toEqual([
      ['flatness', 'alone', null],
      ['flatness', 'alone', null],
    ])
  })

  test('have no factor between a plain figure and one per millimetre, or upper and lower', () => {
    const perMm = endPlay(1, { perMmOf: 'shaft' })
    expect(kinds(setOf(endPlay(50)), setOf(perMm))).toEqual([['end-play', 'not-comparable', null]])
    const lower = endPlay(50, { lower: 10, upper: null })
    expect(kinds(setOf(endPlay(50)), setOf(lower))).toEqual([['end-play', 'not-comparable', null]])
  })

  test('name the factor of what is written alike, and say that something else stands beside it', () => {
    const squareness = (upper: number, changes = {}) =>
      buildLimit({ characteristic: 'chamber-face-squareness', upper, ...changes })
    const [row] = compareLimits([
      setOf(squareness(80)),
      setOf(squareness(30)),
      setOf(squareness(0.5, { perMmOf: 'bore' })),
    ])
    expect(row).toMatchObject({ kind: 'differs' })
    expect(row?.compared.map((one) => one.upper)).toEqual([80, 30])
    // 0.08 mm and 0.03 mm, as a table of pump instructions prints them.
    expect(row?.ratio).toBeCloseTo(2.667, 3)
  })

  test('compare lower limits too, and take the larger of both factors', () => {
    const height = (lower: number, upper: number) =>
      buildLimit({ characteristic: 'face-height', lower, upper })
    expect(kinds(setOf(height(1000, 3000)), setOf(height(2000, 3300)))).toEqual([
      ['face-height', 'differs', 2],
    ])
  })

  test('keep the order of the sets, with nothing where a set says nothing', () => {
    const [row] = compareLimits([setOf(), setOf(endPlay(50)), setOf(endPlay(250))])
    expect(row?.cells.map((cell) => cell.map((one) => one.upper))).toEqual([[], [50], [250]])
  })
})
