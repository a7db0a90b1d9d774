import { describe, expect, test } from 'vitest'
import type { LimitSet, LimitSetStep } from '../../src/domain/limit-set.ts'
import { limitSetStanding } from '../../src/domain/limit-set-standing.ts'
import { limitSetState } from '../../src/domain/limit-set-state.ts'
import { limitSetStepRefusal } from '../../src/domain/limit-set-step-refusal.ts'
import { offeredLimitSets } from '../../src/domain/offered-limit-sets.ts'
import { parseApproval, parseRetirement } from '../../src/domain/parse-limit-set-step.ts'
import { buildLimit, buildLimitSet } from '../support/build-limit-set.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const step = (kind: LimitSetStep['step'], effectiveOn: string): LimitSetStep => {
  return { step: kind, effectiveOn, reason: 'x', byId: 3, byName: 'Ian', at: effectiveOn }
}
const approved = (day: string) => step('approved', day)
const retired = (day: string) => step('retired', day)
const setOf = (id: number, steps: readonly LimitSetStep[], changes: Partial<LimitSet> = {}) =>
  buildLimitSet({ id, steps, ...changes })

describe('the state of a set', () => {
  test('goes from draft over approved and in force to retired, by the day', () => {
    const steps = [approved('2026-03-01'), retired('2026-06-01')]
    const at = (day: string) => limitSetState({ steps }, day)
    expect(limitSetState({ steps: [] }, '2026-03-01')).toBe('draft')
    expect(['2026-02-28', '2026-03-01', '2026-05-31', '2026-06-01'].map(at)).toEqual([
      'approved',
      'in-force',
      'in-force',
      'retired',
    ])
  })
})

describe('the sets that are offered', () => {
  const first = setOf(1, [approved('2026-01-01')])
  const second = setOf(2, [approved('2026-06-01')], { version: 2 })
  const draft = setOf(3, [], { version: 3 })
  const gas = setOf(4, [approved('2026-02-01')], { name: 'Gas' })
  const sets = [draft, second, first, gas]
  const offered = (day: string) => offeredLimitSets(sets, day).map((one) => one.id)

  test('are those in force; the one of the latest day comes first', () => {
    expect(offered('2025-12-31')).toEqual([])
    expect(offered('2026-01-15')).toEqual([1])
    expect(offered('2026-05-31')).toEqual([4, 1])
  })

  test('are of each name only the newest that is in force: an older one goes on until then', () => {
    expect(offered('2026-06-01')).toEqual([2, 4])
    const standing = (set: LimitSet, day: string) => limitSetStanding(set, sets, day)
    expect(standing(first, '2026-05-31')).toBe('in-force')
    expect(standing(first, '2026-06-01')).toBe('replaced')
    expect(standing(second, '2026-05-31')).toBe('approved')
    expect(standing(draft, '2026-06-01')).toBe('draft')
  })

  test('are again the older one, where the newer one is retired', () => {
    const over = { ...second, steps: [...second.steps, retired('2026-07-01')] }
    expect(offeredLimitSets([over, first], '2026-07-01').map((one) => one.id)).toEqual([1])
  })

  test('of one day come with the one that was stored later first', () => {
    const other = setOf(5, [approved('2026-02-01')], { name: 'Other' })
    expect(offeredLimitSets([gas, other], '2026-03-01').map((one) => one.id)).toEqual([5, 4])
  })
})

describe('an approval', () => {
  const ian = { id: 3, role: 'inspector', isActive: true } as const
  const refusal = (set: LimitSet, by: Parameters<typeof limitSetStepRefusal>[0]['by'] = ian) =>
    limitSetStepRefusal({ set, step: 'approved', by })

  test('is an inspector’s who did not write the draft', () => {
    const draft = setOf(1, [], { writtenById: 4 })
    expect(refusal(draft)).toBeUndefined()
    expect(refusal(draft, { ...ian, role: 'manager' })?.reason).toBe('not-inspector')
    expect(refusal(draft, { ...ian, isActive: false })?.reason).toBe('not-inspector')
    expect(refusal({ ...draft, writtenById: 3 })?.reason).toBe('own-draft')
  })

  test('is given once, and not to what is retired', () => {
    expect(refusal(setOf(1, [approved('2026-01-01')]))?.reason).toBe('limit-set-approved')
    expect(refusal(setOf(1, [retired('2026-01-01')]))?.reason).toBe('limit-set-retired')
  })

  test('is refused where limits tie, and names both of them', () => {
    const limits = [
      buildLimit({ id: 7, faceMaterial: 'alumina', asWritten: 'two bands' }),
      buildLimit({ id: 8, characteristic: 'end-play' }),
      buildLimit({ id: 9, diameterUpToMm: 75, asWritten: 'three bands' }),
    ]
    const tie = refusal(setOf(1, [], { limits }))
    expect(tie?.reason).toBe('limits-tie')
    expect(tie?.details).toEqual({ first: '1. two bands', second: '3. three bands' })
  })

  test('is for today or later, today where no day is given', () => {
    const of = (inForceFrom: string) => parseApproval({ inForceFrom }, '2026-06-01')
    expect(accepted(of(''))).toEqual({ effectiveOn: '2026-06-01', reason: '' })
    expect(accepted(of('2026-06-02')).effectiveOn).toBe('2026-06-02')
    expect(faultsOf(of('2026-05-31'))).toEqual(['inForceFrom not-later'])
    expect(faultsOf(of('soon'))).toEqual(['inForceFrom not-a-date'])
  })
})

describe('a retirement', () => {
  const ian = { id: 3, role: 'inspector', isActive: true } as const

  test('is possible of a draft and of what is in force, once', () => {
    const refusal = (steps: readonly LimitSetStep[]) =>
      limitSetStepRefusal({ set: setOf(1, steps, { writtenById: 3 }), step: 'retired', by: ian })
    expect(refusal([])).toBeUndefined()
    expect(refusal([approved('2026-01-01')])).toBeUndefined()
    expect(refusal([retired('2027-01-01')])?.reason).toBe('limit-set-retired')
  })

  test('needs a reason, and a day that is not over', () => {
    const of = (reason: string, retiredFrom = '') =>
      parseRetirement({ reason, retiredFrom }, '2026-06-01')
    expect(accepted(of('a new standard'))).toEqual({
      effectiveOn: '2026-06-01',
      reason: 'a new standard',
    })
    expect(faultsOf(of(''))).toEqual(['reason empty'])
    expect(faultsOf(of('no'))).toEqual(['reason too-short'])
    expect(faultsOf(of('a new standard', '2026-05-31'))).toEqual(['retiredFrom not-later'])
  })
})
