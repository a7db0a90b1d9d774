import { describe, expect, test } from 'vitest'
import { isMoreSpecific } from '../../src/domain/is-more-specific.ts'
import type { LimitCase } from '../../src/domain/limit-case.ts'
import { matchesCase } from '../../src/domain/limit-for.ts'
import type { Limit } from '../../src/domain/limit-set.ts'
import { limitTies } from '../../src/domain/limit-ties.ts'
import { buildLimitCase } from '../support/build-limit-case.ts'
import { buildLimit } from '../support/build-limit-set.ts'

const idsOf = (limits: readonly Limit[]) =>
  limitTies(limits).map((pair) => pair.map((one) => one.id))
const general = buildLimit({ id: 1 })
const carbon = buildLimit({ id: 2, faceMaterial: 'carbon-graphite' })
const small = buildLimit({ id: 3, diameterUpToMm: 75 })

describe('limits tie', () => {
  test('where one result can have both and neither states more', () => {
    expect(idsOf([general, carbon, small])).toEqual([[2, 3]])
    expect(idsOf([general, { ...general, id: 4 }])).toEqual([[1, 4]])
  })

  test('where ranges overlap and neither lies within the other', () => {
    const middle = buildLimit({ id: 4, diameterOverMm: 50, diameterUpToMm: 150 })
    expect(idsOf([small, middle])).toEqual([[3, 4]])
  })

  test('named each with each, where three of them do', () => {
    const dry = buildLimit({ id: 5, service: 'dry-gas' })
    expect(idsOf([carbon, small, dry])).toEqual([
      [2, 3],
      [2, 5],
      [3, 5],
    ])
  })
})

describe('limits do not tie', () => {
  test('that hold for different things', () => {
    expect(idsOf([general, buildLimit({ id: 4, characteristic: 'roughness' })])).toEqual([])
    expect(idsOf([carbon, buildLimit({ id: 4, faceMaterial: 'alumina' })])).toEqual([])
    const large = buildLimit({ id: 4, diameterOverMm: 75 })
    expect(idsOf([small, large])).toEqual([])
  })

  test('of which one lies within the other', () => {
    const narrow = buildLimit({ id: 4, diameterOverMm: 25, diameterUpToMm: 75 })
    const smaller = buildLimit({ id: 5, diameterUpToMm: 25 })
    expect(idsOf([small, narrow, smaller])).toEqual([])
  })

  test('once a third thing is asked of one of them', () => {
    expect(idsOf([small, { ...carbon, diameterUpToMm: 75 }])).toEqual([])
  })
})

/** Every limit and every case that a few values make: what ties is what some case leaves to chance. */
describe('brute force', () => {
  const materials = [null, 'carbon-graphite', 'alumina']
  const ranges = [
    [null, null],
    [null, 50],
    [20, 80],
    [50, null],
    [30, 50],
  ] as const
  const pressures = [
    [null, null],
    [2000, null],
  ] as const
  const speeds = [null, 1500] as const
  const limits = materials.flatMap((faceMaterial) =>
    ranges.flatMap(([diameterOverMm, diameterUpToMm]) =>
      pressures.flatMap(([pressureOverKPa, pressureUpToKPa]) =>
        speeds.map((speedOverPerMin) =>
          buildLimit({
            faceMaterial,
            diameterOverMm,
            diameterUpToMm,
            pressureOverKPa,
            pressureUpToKPa,
            speedOverPerMin,
          }),
        ),
      ),
    ),
  )
  const cases: LimitCase[] = materials.flatMap((faceMaterial) =>
    [null, 10, 20, 25, 30, 40, 50, 60, 80, 90].flatMap((diameterMm) =>
      [null, 1000, 3000].flatMap((pressureKPa) =>
        [null, 1000, 3000].map((speedPerMin) =>
          buildLimitCase({ faceMaterial, diameterMm, pressureKPa, speedPerMin }),
        ),
      ),
    ),
  )

  test('finds the same pairs', () => {
    let tieCount = 0
    for (const [index, one] of limits.entries()) {
      for (const other of limits.slice(index + 1)) {
        const isComparable = isMoreSpecific(one, other) || isMoreSpecific(other, one)
        const isChance =
          !isComparable && cases.some((each) => matchesCase(one, each) && matchesCase(other, each))
        expect(limitTies([one, other]).length > 0, JSON.stringify([one, other])).toBe(isChance)
        if (isChance) tieCount++
      }
    }
    expect(tieCount).toBeGreaterThan(20)
    expect(tieCount).toBeLessThan((limits.length * (limits.length - 1)) / 2)
  })

  test('never finds two limits each more specific than the other', () => {
    for (const one of limits) {
      for (const other of limits) {
        expect(isMoreSpecific(one, other) && isMoreSpecific(other, one)).toBe(false)
      }
    }
  })
})
