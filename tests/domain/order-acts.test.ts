import { describe, expect, it } from 'vitest'
import { AppError } from '../../src/domain/app-error.ts'
import { orderActs, requireMayMove } from '../../src/domain/order-acts.ts'
import { roles } from '../../src/domain/role.ts'
import { allStages, type Stage } from '../../src/domain/stage.ts'

const at = (stage: Stage) => ({ stage, decontamination: 'stated-clean' }) as const

describe('orderActs', () => {
  it('lets only the technician record, and only while the order is open', () => {
    const recording = allStages.flatMap((stage) =>
      roles.filter((role) => orderActs(at(stage), role).canRecord).map((role) => [stage, role]),
    )
    expect(recording).toEqual([
      ['received', 'technician'],
      ['stripped', 'technician'],
      ['lapping', 'technician'],
      ['testing', 'technician'],
      ['refused', 'technician'],
    ])
  })

  it('offers nothing that opens a seal which nobody has stated clean, wherever it stands', () => {
    for (const stage of ['received', 'stripped', 'lapping', 'testing', 'refused'] as const) {
      const acts = orderActs({ stage, decontamination: 'not-stated' }, 'technician')
      expect(acts.moves, stage).toEqual([])
      expect(acts, stage).toMatchObject({ canRecord: true, canRecordOpened: false })
      expect(orderActs(at(stage), 'technician').canRecordOpened, stage).toBe(true)
    }
    expect(orderActs(at('received'), 'technician').moves).toEqual([
      'stripped',
      'lapping',
      'testing',
    ])
  })

  it('offers dispatch after release and nothing after dispatch', () => {
    for (const role of ['technician', 'inspector', 'manager'] as const) {
      expect(orderActs(at('released'), role).moves).toEqual(['dispatched'])
      expect(orderActs(at('dispatched'), role).moves).toEqual([])
    }
  })

  it('keeps the hand of the inspector off the work, and of the customer off everything', () => {
    expect(orderActs(at('lapping'), 'inspector')).toMatchObject({ moves: [], canWithdraw: false })
    expect(orderActs(at('lapping'), 'customer')).toEqual({
      canRecord: false,
      canRecordOpened: false,
      canStateDecontamination: false,
      canSeeEvidence: false,
      canWithdraw: false,
      canAgreeRule: false,
      moves: [],
    })
  })

  it('lets inspector and manager agree on a rule while the order is at the bench', () => {
    for (const role of roles) {
      const isTheirs = role === 'inspector' || role === 'manager'
      expect(orderActs(at('received'), role).canAgreeRule, role).toBe(isTheirs)
      expect(orderActs(at('handed-over'), role).canAgreeRule, role).toBe(false)
    }
  })

  it('lets technician and manager withdraw what is not released', () => {
    expect(orderActs(at('handed-over'), 'manager').canWithdraw).toBe(true)
    expect(orderActs(at('testing'), 'technician').canWithdraw).toBe(true)
    expect(orderActs(at('released'), 'manager').canWithdraw).toBe(false)
  })

  it('refuses a withdrawal by the inspector as not for that role', () => {
    expect(() => requireMayMove('inspector', 'withdrawn')).toThrow(AppError)
    expect(() => requireMayMove('inspector', 'dispatched')).not.toThrow()
  })
})
