import { describe, expect, it } from 'vitest'
import { sixteenPercentRule } from '../../../src/science/acceptance/sixteen-percent-rule.ts'

const upperLimit = 0.2
const of = (...values: readonly number[]) => sixteenPercentRule({ values, upperLimit })
const many = (count: number, beyond: number) =>
  of(...Array.from({ length: count }, (_, index) => (index < beyond ? 0.21 : 0.19)))

describe('the 16 % rule', () => {
  it('accepts by the first trace alone up to 70 % of the limit', () => {
    expect(of(0.14)).toEqual({ kind: 'accepted', beyondCount: 0 })
    expect(of(0.1401)).toEqual({ kind: 'more', untilCount: 3, beyondCount: 0 })
    // 0.7 x 0.2 is 0.13999999999999999 in doubles: what a computer rounds is forgiven.
    expect(of(0.7 * 0.2).kind).toBe('accepted')
  })

  it.each([
    [1, 0, 'more'],
    [2, 0, 'more'],
    [3, 0, 'accepted'],
    [3, 1, 'more'],
    [5, 1, 'more'],
    [6, 1, 'accepted'],
    [6, 2, 'more'],
    [11, 2, 'more'],
    [12, 2, 'accepted'],
    [3, 3, 'refused'],
    [12, 3, 'refused'],
    [18, 3, 'refused'],
    // 3 of 19 are 15.8 %.
    [19, 3, 'accepted'],
    [24, 4, 'refused'],
  ])('of %i traces with %i above the limit says %s (ISO 4288, from memory)', (n, beyond, kind) => {
    expect(many(n, beyond)).toMatchObject({ kind, beyondCount: beyond })
  })

  it('says with how many traces it would be decided', () => {
    expect([many(2, 0), many(4, 1), many(7, 2)].map((one) => 'untilCount' in one && one)).toEqual([
      { kind: 'more', untilCount: 3, beyondCount: 0 },
      { kind: 'more', untilCount: 6, beyondCount: 1 },
      { kind: 'more', untilCount: 12, beyondCount: 2 },
    ])
  })

  it('never accepts a surface of which more than 16 % of twelve or more traces are above', () => {
    let lookedAt = 0
    for (let count = 13; count <= 24; count++) {
      for (let beyond = 0; beyond <= count; beyond++) {
        const isAccepted = many(count, beyond).kind === 'accepted'
        expect(isAccepted).toBe(beyond / count <= 0.16)
        lookedAt++
      }
    }
    expect(lookedAt).toBeGreaterThan(200)
  })

  it('does not accept by a first trace that the others belie', () => {
    expect(of(0.1, 0.3).kind).toBe('more')
    expect(of(0.1, 0.3, 0.3, 0.3).kind).toBe('refused')
  })

  it('says the same in every unit', () => {
    const inNm = sixteenPercentRule({ values: [190, 210, 150], upperLimit: 200 })
    expect(inNm).toEqual(of(0.19, 0.21, 0.15))
  })

  it('takes a value at the limit as kept', () => {
    expect(of(0.2, 0.2, 0.2).kind).toBe('accepted')
  })

  it('refuses to judge nothing, and what is no number', () => {
    expect(() => of()).toThrow('sixteenPercentRule requires values')
    expect(() => of(Number.NaN)).toThrow(RangeError)
    const noLimit = { values: [0.1], upperLimit: Number.POSITIVE_INFINITY }
    expect(() => sixteenPercentRule(noLimit)).toThrow(RangeError)
  })
})
