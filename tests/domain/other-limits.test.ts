import { describe, expect, it } from 'vitest'
import { otherLimits } from '../../src/domain/other-limits.ts'
import { buildLimitCase } from '../support/build-limit-case.ts'
import { buildLimit, buildLimitSet } from '../support/build-limit-set.ts'

const setOf = (id: number, changes: Parameters<typeof buildLimit>[0]) =>
  buildLimitSet({ id, limits: [buildLimit({ characteristic: 'end-play', ...changes })] })
const strict = setOf(1, { upper: 50 })
const loose = setOf(2, { upper: 250 })
const perBore = setOf(3, { upper: 0.5, perMmOf: 'bore' })
const play = (value: number) => ({ characteristic: 'end-play' as const, value })
const of = { ownId: 2, limitCase: buildLimitCase() }

describe('otherLimits', () => {
  it('says who would pass a float of 0.1 mm that published limits five times apart contest', () => {
    const conflict = otherLimits(play(100), { ...of, sets: [strict, loose] })
    expect(conflict.ratio).toBe(5)
    expect(conflict.isContested).toBe(true)
    expect(conflict.limits.map((one) => [one.set.id, one.isOwn, one.isWithin])).toEqual([
      [2, true, true],
      [1, false, false],
    ])
  })

  it('contests nothing that every set passes, or refuses', () => {
    expect(otherLimits(play(40), { ...of, sets: [strict, loose] }).isContested).toBe(false)
    expect(otherLimits(play(300), { ...of, sets: [strict, loose] }).isContested).toBe(false)
  })

  it('multiplies a limit per millimetre out, and says nothing where its size is not known', () => {
    const unknown = otherLimits(play(40), { ...of, sets: [perBore] })
    expect(unknown.limits[0]?.isWithin).toBeNull()
    expect(unknown.ratio).toBeNull()
    const limitCase = buildLimitCase({ sizesMm: { bore: 100, shaft: null, face: null } })
    const known = otherLimits(play(40), { ownId: 2, sets: [perBore, loose], limitCase })
    expect(known.limits[1]?.applied.upper).toBe(50)
    expect(known.ratio).toBe(5)
  })

  it('leaves out sets that limit it not at all', () => {
    const conflict = otherLimits(play(40), { ...of, sets: [buildLimitSet({ id: 9 }), loose] })
    expect(conflict.limits.map((one) => one.set.id)).toEqual([2])
  })
})
