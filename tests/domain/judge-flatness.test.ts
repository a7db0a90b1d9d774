import { expect, test } from 'vitest'
import { judgeFlatness } from '../../src/domain/judge-flatness.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildJudgeContext } from '../support/build-judge-context.ts'
import { buildLimit, buildLimitSet } from '../support/build-limit-set.ts'
import { buildUncertainty } from '../support/build-uncertainty.ts'

const rotating = 11
const seat = 12
const judge = (flatnessUm: number | null, limitSet = buildLimitSet()) =>
  judgeFlatness(
    { flatnessUm, uncertainty: null, componentId: rotating },
    buildJudgeContext({ limitSet }),
  )

test('passes at the limit and fails beyond it, unrounded', () => {
  const at = judge(0.8814)
  expect([at.verdict, at.why, at.value, at.limit?.id]).toEqual(['pass', 'within-limit', 0.8814, 1])
  expect([at.lower, at.upper]).toEqual([null, 0.8814])
  // Prints as 0.881 like the limit, and is beyond it all the same.
  const beyond = judge(0.88141)
  expect([beyond.verdict, beyond.why]).toEqual(['fail', 'beyond-limit'])
})

test('passes three helium bands at a limit of 0.8814 um, though doubles round up', () => {
  expect(judge((3 * 587.6) / 2000).verdict).toBe('pass')
})

test('never passes an unreadable face, with a limit or without', () => {
  const reading = buildFlatnessReading({ pattern: 'unreadable' })
  const judged = judgeFlatness(reading, buildJudgeContext())
  expect([judged.verdict, judged.why, judged.value]).toEqual(['fail', 'unreadable', null])
  expect(judged.decision).toBeNull()
  expect(judge(null, buildLimitSet({ limits: [] })).verdict).toBe('fail')
})

test('leaves open what has no limit: no limit is no pass', () => {
  const judged = judge(0.1, buildLimitSet({ limits: [] }))
  expect([judged.verdict, judged.why, judged.limit]).toEqual(['open', 'no-limit', null])
})

test('goes by the material of the face', () => {
  const hard = buildLimit({ id: 5, faceMaterial: 'silicon-carbide-sintered', upper: 0.3 })
  const limitSet = buildLimitSet({ limits: [buildLimit(), hard] })
  const context = buildJudgeContext({ limitSet })
  const of = { flatnessUm: 0.5, uncertainty: null }
  expect(judgeFlatness({ ...of, componentId: rotating }, context).verdict).toBe('pass')
  expect(judgeFlatness({ ...of, componentId: seat }, context).verdict).toBe('fail')
})

test('weighs the uncertainty of the reading by the agreed rule', () => {
  const reading = { flatnessUm: 0.85, uncertainty: buildUncertainty(0.04), componentId: rotating }
  const { agreedRule } = buildJudgeContext()
  const judged = judgeFlatness(
    reading,
    buildJudgeContext({ agreedRule: { ...agreedRule, rule: 'guard-u95' } }),
  )
  expect([judged.verdict, judged.why, judged.largestSource]).toEqual([
    'fail',
    'within-guard',
    'reading',
  ])
  expect(judgeFlatness(reading, buildJudgeContext()).verdict).toBe('pass')
})
