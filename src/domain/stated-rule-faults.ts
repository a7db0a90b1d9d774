import type { StatedRule } from './agreed-rule.ts'
import type { Fault } from './fault.ts'
import type { Role } from './role.ts'

/**
 * What stands against the rule that is stated for an order at its receipt. Where nothing is agreed
 * with the customer, whoever receives writes down what the order says; over an agreement goes
 * nobody who may measure the seal afterwards, and nobody without saying where that was agreed.
 * @param agreed what the customer agreed to; undefined for nothing
 */
export function statedRuleFaults(question: {
  readonly stated: StatedRule | null
  readonly agreed: StatedRule | undefined
  readonly role: Role
}): readonly Fault[] {
  const { stated, agreed, role } = question
  if (stated === null || agreed === undefined || isSame(stated, agreed)) return []
  if (role === 'technician') return [{ field: 'decisionRule', kind: 'agreed-with-customer' }]
  return stated.reference === '' ? [{ field: 'ruleReference', kind: 'empty' }] : []
}

function isSame(one: StatedRule, other: StatedRule): boolean {
  return one.rule === other.rule && one.probability === other.probability
}
