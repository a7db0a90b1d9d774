import { describe, expect, it } from 'vitest'
import { finishTraces } from '../../src/domain/finish-traces.ts'
import { buildMeasuredValue } from '../support/build-measured-value.ts'

const rough = (...um: readonly number[]) => {
  const readings = um.map((one) => ({ um: one, typed: String(one) }))
  return buildMeasuredValue({ characteristic: 'roughness', componentId: 11, readings })
}

describe('the traces of a finish', () => {
  it('are counted, the largest told, and held to the limit one by one', () => {
    expect(finishTraces(rough(0.18, 0.21, 0.15), 0.2)).toEqual({
      count: 3,
      largestUm: 0.21,
      rule: { kind: 'more', untilCount: 6, beyondCount: 1 },
    })
    expect(finishTraces(rough(0.13), 0.2)).toMatchObject({
      count: 1,
      rule: { kind: 'accepted' },
    })
  })

  it('have no rule without an upper limit', () => {
    expect(finishTraces(rough(0.13, 0.12), null)).toEqual({
      count: 2,
      largestUm: 0.13,
      rule: null,
    })
  })

  it('are none of a height or a movement: its readings repeat one figure', () => {
    expect(finishTraces(buildMeasuredValue(), 125)).toBeNull()
  })
})
