import { describe, expect, test } from 'vitest'
import { openFields } from '../../src/domain/fields.ts'
import { parseAgreedRule, statedRule } from '../../src/domain/parse-agreed-rule.ts'
import { parseReceipt } from '../../src/domain/parse-receipt.ts'
import { decisionRules } from '../../src/science/acceptance/decision-rule.ts'
import { faultsOf } from '../support/faults-of.ts'

const agreed = { decisionRule: 'guard-u95', ruleReference: 'Contract 12' }

describe('an agreement', () => {
  test('takes each of the rules, and where it was agreed', () => {
    for (const rule of decisionRules) {
      const parsed = parseAgreedRule({ ...agreed, decisionRule: rule })
      expect(parsed).toEqual({
        ok: true,
        value: { rule, probability: 0.95, reference: 'Contract 12' },
      })
    }
  })

  test('asks for the rule and for the place where it was agreed', () => {
    expect(faultsOf(parseAgreedRule({}))).toEqual(['decisionRule empty'])
    expect(faultsOf(parseAgreedRule({ ...agreed, ruleReference: '  ' }))).toEqual([
      'ruleReference empty',
    ])
    expect(faultsOf(parseAgreedRule({ ...agreed, decisionRule: 'generous' }))).toEqual([
      'decisionRule not-a-choice',
    ])
  })

  test('takes a probability for the rule that asks for one, and 0.95 where none is given', () => {
    const rule = { ...agreed, decisionRule: 'guard-probability' }
    const probabilityOf = (input: object) => {
      const parsed = parseAgreedRule({ ...rule, ...input })
      return parsed.ok ? parsed.value.probability : parsed.faults
    }
    expect(probabilityOf({})).toBe(0.95)
    expect(probabilityOf({ decisionProbability: '0,99' })).toBe(0.99)
    expect(faultsOf(parseAgreedRule({ ...agreed, decisionProbability: '0.99' }))).toEqual([
      'decisionProbability not-here',
    ])
  })

  test('refuses a probability at which there is no guard band, or one without end', () => {
    const rule = { ...agreed, decisionRule: 'guard-probability' }
    for (const [typed, kind] of [
      ['0.5', 'below'],
      ['95', 'above'],
      ['1', 'above'],
      ['high', 'not-a-number'],
    ] as const) {
      expect(faultsOf(parseAgreedRule({ ...rule, decisionProbability: typed }))).toEqual([
        `decisionProbability ${kind}`,
      ])
    }
  })

  test('refuses a reference that no certificate has room for', () => {
    expect(faultsOf(parseAgreedRule({ ...agreed, ruleReference: 'x'.repeat(201) }))).toEqual([
      'ruleReference too-long',
    ])
  })
})

describe('a receipt', () => {
  test('may state no rule, and states none with a probability or reference alone', () => {
    expect(statedRule(openFields({}))).toBeNull()
    expect(parseReceipt({})).toMatchObject({ ok: true, value: { statedRule: null } })
    for (const alone of [{ decisionProbability: '0.9' }, { ruleReference: 'PO 9' }]) {
      expect(faultsOf(parseReceipt(alone))).toEqual(['decisionRule empty'])
    }
  })

  test('may state one without a reference: the order itself is one', () => {
    expect(parseReceipt({ decisionRule: 'four-outcomes' })).toMatchObject({
      value: { statedRule: { rule: 'four-outcomes', reference: '' } },
    })
  })

  test('takes the service of the seal, and holds it not stated where nobody said', () => {
    expect(parseReceipt({})).toMatchObject({ value: { service: 'not-stated' } })
    expect(parseReceipt({ service: 'slurry' })).toMatchObject({ value: { service: 'slurry' } })
    expect(faultsOf(parseReceipt({ service: 'soup' }))).toEqual(['service not-a-choice'])
  })
})
