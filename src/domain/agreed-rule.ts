import type { DecisionRule } from '../science/acceptance/decision-rule.ts'

/** How results are compared with limits, agreed before measuring; stated on the certificate. */
export type AgreedRule = {
  readonly rule: DecisionRule
  /** Of conformity, for `guard-probability`. */
  readonly probability: number
  /** Where it was agreed: an order, a letter, a contract; '' where nothing was stated. */
  readonly reference: string
  /** For the order itself, for its customer, or by nobody: the house's own. */
  readonly scope: 'order' | 'customer' | 'house'
  readonly byName: string
  readonly at: string
}

/** What is agreed on, before anyone has recorded it. */
export type StatedRule = Pick<AgreedRule, 'rule' | 'probability' | 'reference'>

/** The house rule where nobody agreed on another; simple acceptance, ILAC-G8:09/2019. */
export const houseRule: AgreedRule = {
  rule: 'simple',
  probability: 0.95,
  reference: '',
  scope: 'house',
  byName: '',
  at: '',
}
