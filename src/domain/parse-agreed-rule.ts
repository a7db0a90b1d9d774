import { decisionRules } from '../science/acceptance/decision-rule.ts'
import { houseRule, type StatedRule } from './agreed-rule.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'

export const agreedRuleFields = ['decisionRule', 'decisionProbability', 'ruleReference'] as const
export const ruleReferenceLength = { max: 200 } as const
/** At 0.5 the guard band is nothing, at 1 it has no end. */
export const decisionProbabilityBounds = { min: 0.501, max: 0.9999 } as const

/** Reads a rule that is agreed on: which one, and where it was agreed. */
export function parseAgreedRule(input: Input): Parsed<StatedRule> {
  const fields = openFields(input)
  const stated = statedRule(fields)
  if (stated === null && !isFaulty(fields, 'decisionRule')) fields.fault('decisionRule', 'empty')
  if (stated?.reference === '' && !isFaulty(fields, 'ruleReference')) {
    fields.fault('ruleReference', 'empty')
  }
  return fields.finish(stated ?? houseRule)
}

/**
 * Reads a rule where it may be stated; null where none was. A probability belongs to the rule that
 * asks for one, and neither it nor a reference says anything without a rule.
 */
export function statedRule(fields: Fields): StatedRule | null {
  const rule = fields.optionalChoice('decisionRule', decisionRules)
  const stated = fields.optionalDecimal('decisionProbability', decisionProbabilityBounds)
  const reference = fields.optionalText('ruleReference', ruleReferenceLength.max)
  if (rule === null) {
    if (stated !== null || reference !== '') fields.fault('decisionRule', 'empty')
    return null
  }
  if (stated !== null && rule !== 'guard-probability')
    fields.fault('decisionProbability', 'not-here')
  return { rule, probability: stated ?? houseRule.probability, reference }
}

function isFaulty(fields: Fields, name: string): boolean {
  return fields.faults.some((one) => one.field === name)
}
