import { expect, test } from 'vitest'
import { houseRule, type StatedRule } from '../../src/domain/agreed-rule.ts'
import { statedRuleFaults } from '../../src/domain/stated-rule-faults.ts'

const agreed: StatedRule = { rule: 'guard-u95', probability: 0.95, reference: 'Contract 12' }
const stated: StatedRule = { ...houseRule, reference: 'PO 12' }

test('whoever receives may state a rule where none is agreed with the customer', () => {
  for (const role of ['technician', 'inspector', 'manager'] as const) {
    expect(statedRuleFaults({ stated, agreed: undefined, role })).toEqual([])
    expect(statedRuleFaults({ stated: null, agreed, role })).toEqual([])
  }
})

test('an inspector or manager goes over an agreement, and says where that was agreed', () => {
  for (const role of ['inspector', 'manager'] as const) {
    expect(statedRuleFaults({ stated, agreed, role })).toEqual([])
    expect(statedRuleFaults({ stated: { ...stated, reference: '' }, agreed, role })).toEqual([
      { field: 'ruleReference', kind: 'empty' },
    ])
  }
})

test('a technician, who may measure it, states no other rule than the agreed one', () => {
  const by = (rule: StatedRule) => statedRuleFaults({ stated: rule, agreed, role: 'technician' })
  expect(by(stated)).toEqual([{ field: 'decisionRule', kind: 'agreed-with-customer' }])
  expect(by({ ...agreed, reference: '' })).toEqual([])
  expect(by({ ...agreed, probability: 0.99 })).toHaveLength(1)
})
