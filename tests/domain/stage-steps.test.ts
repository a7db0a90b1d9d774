import { describe, expect, it } from 'vitest'
import type { Stage } from '../../src/domain/stage.ts'
import { stageSteps } from '../../src/domain/stage-steps.ts'
import type { StageChange } from '../../src/domain/work-order.ts'

/** One step a day, from the 1st. */
function way(...stages: readonly Stage[]): readonly StageChange[] {
  return stages.map((to, index) => ({
    id: index + 1,
    workOrderId: 1,
    from: stages[index - 1] ?? null,
    to,
    reason: '',
    byName: 'Tess',
    at: `2026-11-0${index + 1}T08:00:00.000Z`,
  }))
}

const brief = (stage: Stage, ...before: readonly Stage[]) =>
  stageSteps(stage, way(...before, stage)).map((one) => `${one.stage} ${one.state}`)

describe('stageSteps', () => {
  it('shows what is done, where the order stands, and what is to come', () => {
    expect(brief('lapping', 'received', 'stripped')).toEqual([
      'received done',
      'stripped done',
      'lapping current',
      'testing to-come',
      'handed-over to-come',
      'released to-come',
      'dispatched to-come',
    ])
  })

  it('leaves out a stage that was passed over', () => {
    expect(brief('testing', 'received')).not.toContain('stripped done')
    expect(brief('testing', 'received')).not.toContain('lapping done')
  })

  it('shows refusal after hand-over, with release still to come', () => {
    expect(brief('refused', 'received', 'testing', 'handed-over')).toEqual([
      'received done',
      'testing done',
      'handed-over done',
      'refused current',
      'released to-come',
      'dispatched to-come',
    ])
  })

  it('ends with a withdrawal', () => {
    expect(brief('withdrawn', 'received')).toEqual(['received done', 'withdrawn current'])
  })

  it('gives the day the order last came to a stage, and none to what is to come', () => {
    const changes = way('received', 'lapping', 'testing', 'lapping')
    const steps = stageSteps('lapping', changes)
    const lapping = steps.find((one) => one.stage === 'lapping')
    expect(lapping?.at).toBe('2026-11-04T08:00:00.000Z')
    expect(steps.find((one) => one.stage === 'testing')).toEqual({
      stage: 'testing',
      state: 'to-come',
      at: null,
    })
  })
})
