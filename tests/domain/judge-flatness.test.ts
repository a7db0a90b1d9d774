import { expect, test } from 'vitest'
import { judgeFlatness } from '../../src/domain/judge-flatness.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildLimit, buildLimitSet } from '../support/build-limit-set.ts'

const limitSet = buildLimitSet()
const judge = (flatnessUm: number | null, set = limitSet) =>
  judgeFlatness({ flatnessUm }, set, null)

test('passes at the limit and fails beyond it, unrounded', () => {
  const at = judge(0.8814)
  expect([at.verdict, at.why, at.value, at.limit?.id]).toEqual(['pass', 'within-limit', 0.8814, 1])
  // Prints as 0.881 like the limit, and is beyond it all the same.
  const beyond = judge(0.88141)
  expect([beyond.verdict, beyond.why]).toEqual(['fail', 'beyond-limit'])
})

test('passes three helium bands at a limit of 0.8814 um, though doubles round up', () => {
  expect(judge((3 * 587.6) / 2000).verdict).toBe('pass')
})

test('never passes an unreadable face, with a limit or without', () => {
  const reading = buildFlatnessReading({ pattern: 'unreadable' })
  const judged = judgeFlatness(reading, limitSet, null)
  expect([judged.verdict, judged.why, judged.value]).toEqual(['fail', 'unreadable', null])
  expect(judge(null, buildLimitSet({ limits: [] })).verdict).toBe('fail')
})

test('leaves open what has no limit: no limit is no pass', () => {
  const judged = judge(0.1, buildLimitSet({ limits: [] }))
  expect([judged.verdict, judged.why, judged.limit]).toEqual(['open', 'no-limit', null])
})

test('goes by the material of the face', () => {
  const hard = buildLimit({ id: 5, faceMaterial: 'tungsten-carbide', upper: 0.3 })
  const set = buildLimitSet({ limits: [buildLimit(), hard] })
  expect(judgeFlatness({ flatnessUm: 0.5 }, set, 'carbon-graphite').verdict).toBe('pass')
  expect(judgeFlatness({ flatnessUm: 0.5 }, set, 'tungsten-carbide').verdict).toBe('fail')
})
