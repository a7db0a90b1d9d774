import { type AgreedRule, houseRule } from '../../../src/domain/agreed-rule.ts'
import { roundForPrint } from '../../../src/science/rounding/round-for-print.ts'
import { decisionWords } from './decision.ts'

/** The rule that results are compared by: where it is agreed, and where it is told. */
export const agreedRulesWords = {
  title: 'Decision rule',
  lead: 'How a result is compared with its limit is agreed before anything is measured, and stated on the certificate.',
  legend: 'How are results compared with their limits?',
  probability: 'Probability of conformity',
  probabilityHint: `Only for the rule that asks for a stated probability: 0.99 for 99 %. Left empty, it is ${houseRule.probability}.`,
  reference: 'Where was it agreed?',
  referenceHint: 'A contract, an order, a letter. It stands on the certificate.',

  ofCustomer: 'Orders received from now on take this rule. Those here already keep theirs.',
  noneOfCustomer: 'Nothing is agreed with this customer: the house’s rule holds.',
  agreeWithCustomer: 'Agree on a rule',
  agreeForOrder: 'Agree on another rule for this order',
  untilMeasured: 'Possible until the first reading or test of the order.',
  submit: 'Record the agreement',

  atReceipt: 'Another rule is agreed for this order',
  holds: 'What holds unless another rule is agreed',
  asCustomer: 'As agreed with the customer',
  asHouse: 'The house’s rule',

  scope: {
    order: 'Agreed for this order',
    customer: 'Agreed with the customer',
    house: 'Nobody agreed on another, so the house’s rule holds.',
  } satisfies Record<AgreedRule['scope'], string>,
  agreed: (scope: string, reference: string, name: string, day: string) =>
    `${[scope, reference].filter((one) => one !== '').join(', ')}; recorded by ${name} on ${day}.`,
} as const

/** What a rule is called; one for a probability says which. */
export function ruleName({ rule, probability }: Pick<AgreedRule, 'rule' | 'probability'>): string {
  const name = decisionWords.rule[rule]
  return rule === 'guard-probability' ? `${name}, ${percentText(probability)}` : name
}

function percentText(share: number): string {
  return `${roundForPrint({ value: share * 100, decimals: 2 })} %`
}
