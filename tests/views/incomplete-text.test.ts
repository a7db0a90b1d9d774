import { expect, test } from 'vitest'
import { judgeResult } from '../../src/domain/judge-result.ts'
import type { DecisionRule } from '../../src/science/acceptance/decision-rule.ts'
import { improveText } from '../../views/improve-text.ts'
import { incompleteText } from '../../views/incomplete-text.ts'
import { buildLimit } from '../support/build-limit-set.ts'
import { buildUncertainty } from '../support/build-uncertainty.ts'

function judged(value: number, rule: DecisionRule, leftOut: readonly string[]) {
  const uncertainty = buildUncertainty(0.01, { leftOut })
  const result = judgeResult({
    characteristic: 'flatness',
    value,
    uncertainty,
    applied: {
      limit: buildLimit({ lower: null, upper: 2 }),
      lower: null,
      upper: 2,
      isSizeKnown: true,
    },
    agreedRule: { rule, probability: 0.95 },
    uncertaintyShareAtMost: 1 / 3,
  })
  return { result, uncertainty }
}

test('a verdict by the value alone names what its budget lacks', () => {
  const { result, uncertainty } = judged(1, 'simple', ['thermal-bow', 'instrument'])
  const text = incompleteText(result, uncertainty)
  expect(text).toContain('error of the instrument')
  expect(text).toContain('no probability is stated')
  expect(text).not.toContain('thermal bow')
})

test('what a guard band of U refuses all the same says it too', () => {
  const { result, uncertainty } = judged(1.99, 'guard-u95', ['optical-flat'])
  expect(result.why).toBe('within-guard')
  expect(incompleteText(result, uncertainty)).toContain('flatness of the optical flat')
})

test('what could not be decided for it says so once, with what to do', () => {
  const { result, uncertainty } = judged(1, 'guard-u95', ['instrument'])
  expect(incompleteText(result, uncertainty)).toBeNull()
  expect(improveText(result)).toMatch(/error of the instrument.*largest error or the calibration/)
})

test('a whole budget, or none, has nothing to tell', () => {
  const { result, uncertainty } = judged(1, 'simple', ['thermal-bow'])
  expect(incompleteText(result, uncertainty)).toBeNull()
  expect(incompleteText({ ...result, decision: null }, null)).toBeNull()
})
