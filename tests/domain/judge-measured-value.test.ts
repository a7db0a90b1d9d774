import { expect, test } from 'vitest'
import { houseRule } from '../../src/domain/agreed-rule.ts'
import { judgeMeasuredValue } from '../../src/domain/judge-measured-value.ts'
import { buildJudgeContext } from '../support/build-judge-context.ts'
import { buildLimit, buildLimitSet } from '../support/build-limit-set.ts'
import { buildUncertainty } from '../support/build-uncertainty.ts'

const limitSet = buildLimitSet({
  limits: [buildLimit({ id: 8, characteristic: 'roughness', upper: 0.2 })],
})
const roughness = (valueUm: number) => ({
  characteristic: 'roughness' as const,
  valueUm,
  uncertainty: buildUncertainty(0.01),
  componentId: 11,
  sizeMm: null,
})

test('holds a value against the limit of its own characteristic', () => {
  const context = buildJudgeContext({ limitSet })
  expect(judgeMeasuredValue(roughness(0.2), context)).toMatchObject({
    verdict: 'pass',
    why: 'within-limit',
    value: 0.2,
    upper: 0.2,
    limit: { id: 8 },
  })
  expect(judgeMeasuredValue(roughness(0.21), context).verdict).toBe('fail')
})

test('weighs it by the agreed rule, and names what would have to improve', () => {
  const agreedRule = { ...houseRule, rule: 'four-outcomes' } as const
  const judged = judgeMeasuredValue(roughness(0.19), buildJudgeContext({ limitSet, agreedRule }))
  expect([judged.verdict, judged.largestSource]).toEqual(['conditional-pass', 'reading'])
})

test('leaves it open where the set has a limit for something else only', () => {
  const runOut = { ...roughness(0.1), characteristic: 'shaft-run-out', componentId: null } as const
  expect(judgeMeasuredValue(runOut, buildJudgeContext({ limitSet })).why).toBe('no-limit')
})
