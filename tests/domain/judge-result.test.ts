import { describe, expect, test } from 'vitest'
import { judgeResult, type ResultToJudge } from '../../src/domain/judge-result.ts'
import { type DecisionRule, decisionRules } from '../../src/science/acceptance/decision-rule.ts'
import { seededUniform } from '../science/seeded-random.ts'
import { buildLimit } from '../support/build-limit-set.ts'
import { buildUncertainty } from '../support/build-uncertainty.ts'

type Asked = {
  readonly value: number
  readonly rule?: DecisionRule
  readonly u?: number | null
  readonly lower?: number | null
  readonly upper?: number | null
  readonly changes?: Partial<ResultToJudge>
}

function judge({ value, rule = 'simple', u = 0.13, lower = null, upper = 2, changes }: Asked) {
  return judgeResult({
    characteristic: 'flatness',
    value,
    uncertainty: u === null ? null : buildUncertainty(u),
    applied: { limit: buildLimit({ lower, upper }), lower, upper, isSizeKnown: true },
    agreedRule: { rule, probability: 0.95 },
    uncertaintyShareAtMost: 1 / 3,
    ...changes,
  })
}

const outcome = (asked: Asked) => {
  const { verdict, why } = judge(asked)
  return `${verdict} ${why}`
}

describe('the probability of conformity', () => {
  // JCGM 106:2012, 7.3, normal: phi((TL - y) / u), recomputed by hand; to the digits printed.
  test.each([
    [3, 2.8, 0.12, 0.9522],
    [2, 1.74, 0.13, 0.9772],
    [2, 1.9, 0.13, 0.7791],
    [2, 2, 0.13, 0.5],
  ])('at a limit of %d, a result of %d and u = %d is %d', (upper, value, u, probability) => {
    const { decision } = judge({ value, u, upper })
    expect(decision?.conformanceProbability).toBeCloseTo(probability, 4)
    expect(decision?.falseAcceptRisk).toBeCloseTo(1 - probability, 4)
  })
})

// Limit 2, u = 0.13, U = 0.26, so that the guard band ends at 1.74 and 2.26.
describe('by simple acceptance', () => {
  test('the limit itself decides', () => {
    expect(outcome({ value: 2 })).toBe('pass within-limit')
    expect(outcome({ value: 2.01 })).toBe('fail beyond-limit')
  })
})

describe('by a guard band of U', () => {
  test('what keeps the limit by less than U is refused, and says that it is within', () => {
    expect(outcome({ value: 1.74, rule: 'guard-u95' })).toBe('pass within-limit')
    expect(outcome({ value: 1.9, rule: 'guard-u95' })).toBe('fail within-guard')
    expect(outcome({ value: 2, rule: 'guard-u95' })).toBe('fail within-guard')
    expect(outcome({ value: 2.01, rule: 'guard-u95' })).toBe('fail beyond-limit')
  })
})

describe('by a guard band for a probability', () => {
  // 1.645 u = 0.214: proven up to 1.786, disproven from 2.214 on.
  test('what is neither proven nor disproven is not decided', () => {
    expect(outcome({ value: 1.78, rule: 'guard-probability' })).toBe('pass within-limit')
    expect(outcome({ value: 1.9, rule: 'guard-probability' })).toBe('undecidable not-proven')
    expect(outcome({ value: 2.1, rule: 'guard-probability' })).toBe('undecidable not-proven')
    expect(outcome({ value: 2.22, rule: 'guard-probability' })).toBe('fail beyond-limit')
  })
})

describe('by four outcomes', () => {
  test('what is nearer to the limit than U is judged on condition', () => {
    const at = (value: number) => outcome({ value, rule: 'four-outcomes' })
    expect(at(1.74)).toBe('pass within-limit')
    expect(at(1.9)).toBe('conditional-pass within-guard')
    expect(at(2)).toBe('conditional-pass within-guard')
    expect(at(2.1)).toBe('conditional-fail beyond-within-guard')
    expect(at(2.27)).toBe('fail beyond-limit')
  })
})

describe('where the uncertainty takes up more of the limit than the set allows', () => {
  // U = 0.8 of a limit of 2.
  test.each(decisionRules)('nothing near the limit is decided by the rule %s', (rule) => {
    expect(outcome({ value: 1.9, u: 0.4, rule })).toBe('undecidable uncertainty-too-large')
  })

  test('the largest line of the budget is named: it would have to improve', () => {
    expect(judge({ value: 1.9, u: 0.4 }).largestSource).toBe('reading')
    const uncertainty = { ...buildUncertainty(0.4), budget: [] }
    expect(judge({ value: 1.9, changes: { uncertainty } }).largestSource).toBeNull()
  })

  test('the share is the set’s own: the same result is decided where it allows more', () => {
    expect(outcome({ value: 1, u: 0.4, changes: { uncertaintyShareAtMost: 0.5 } })).toBe(
      'pass within-limit',
    )
  })
})

describe('where the uncertainty is not known', () => {
  test('simple acceptance compares the value alone', () => {
    expect(outcome({ value: 2, u: null })).toBe('pass within-limit')
    expect(outcome({ value: 2.01, u: null })).toBe('fail beyond-limit')
    expect(judge({ value: 2, u: null }).decision).toBeNull()
  })

  test.each(decisionRules.filter((rule) => rule !== 'simple'))(
    'the rule %s decides nothing, however good the value is',
    (rule) => {
      for (const value of [0.01, 1.9, 50]) {
        expect(outcome({ value, u: null, rule })).toBe('undecidable no-uncertainty')
      }
    },
  )
})

describe('where the budget leaves out how far off the instrument is', () => {
  const uncertainty = buildUncertainty(0.01, { leftOut: ['repeatability', 'instrument'] })
  const at = (value: number, rule: DecisionRule) => judge({ value, rule, changes: { uncertainty } })

  test.each(decisionRules.filter((rule) => rule !== 'simple'))(
    'the rule %s accepts nothing, and names what is missing',
    (rule) => {
      const { verdict, why, largestSource, decision } = at(1, rule)
      expect([verdict, why, largestSource]).toEqual([
        'undecidable',
        'incomplete-budget',
        'instrument',
      ])
      expect(decision).toBeNull()
    },
  )

  test('simple acceptance compares the value alone', () => {
    expect(at(1.99, 'simple').verdict).toBe('pass')
    expect(at(2.01, 'simple').verdict).toBe('fail')
  })

  test('what a guard band of U refuses stays refused: a wider one would refuse it too', () => {
    expect(at(1.99, 'guard-u95').verdict).toBe('fail')
    expect(at(1.99, 'guard-probability').verdict).toBe('undecidable')
    expect(at(3, 'four-outcomes').verdict).toBe('undecidable')
  })

  test('no probability is stated with a verdict that holds all the same: U is too small', () => {
    // Weighed with the known part alone, 1.99 would conform with phi(0.01 / 0.01) = 84 %.
    for (const decided of [at(1.99, 'simple'), at(2.01, 'simple'), at(1.99, 'guard-u95')]) {
      expect(['pass', 'fail']).toContain(decided.verdict)
      expect(decided.decision).toBeNull()
    }
  })

  test('what is known of it may be too much already, whatever the rest is', () => {
    const wide = buildUncertainty(0.4, { leftOut: ['instrument'] })
    const judged = judge({ value: 1.9, changes: { uncertainty: wide } })
    expect([judged.verdict, judged.why]).toEqual(['undecidable', 'uncertainty-too-large'])
    expect(judged.decision).toBeNull()
  })

  test('a source of the method may be left out', () => {
    const known = buildUncertainty(0.01, { leftOut: ['repeatability', 'thermal-bow'] })
    expect(judge({ value: 1, rule: 'guard-u95', changes: { uncertainty: known } }).verdict).toBe(
      'pass',
    )
  })
})

describe('where the guard bands of two limits leave nothing between them', () => {
  test('the uncertainty is too large, whatever share the set allows', () => {
    // 1.645 u = 0.66 from either side of a tolerance of 1.
    const asked = { value: 1.5, u: 0.4, lower: 1, upper: 2, rule: 'guard-probability' } as const
    const changes = { uncertaintyShareAtMost: 1 }
    expect(outcome({ ...asked, changes })).toBe('undecidable uncertainty-too-large')
  })
})

describe('what there is to compare with', () => {
  test('no limit leaves a result open', () => {
    expect(outcome({ value: 1, changes: { applied: undefined } })).toBe('open no-limit')
    expect(outcome({ value: 1, lower: null, upper: null })).toBe('open no-limit')
  })

  test('a limit per millimetre of a size that nobody stated leaves it open', () => {
    const applied = { limit: buildLimit({ perMmOf: 'bore' }), lower: null, upper: null }
    expect(outcome({ value: 1, changes: { applied: { ...applied, isSizeKnown: false } } })).toBe(
      'open size-not-known',
    )
  })

  test('a lower limit refuses what is too small, and is guarded on its own side', () => {
    const height = (value: number, rule: DecisionRule = 'guard-u95') =>
      outcome({ value, rule, lower: 1, upper: null, changes: { characteristic: 'face-height' } })
    expect(height(1.27)).toBe('pass within-limit')
    expect(height(1.1)).toBe('fail within-guard')
    expect(height(0.9)).toBe('fail beyond-limit')
    expect(height(1, 'simple')).toBe('pass within-limit')
  })

  test('the limit as it holds here stands beside the verdict', () => {
    expect(judge({ value: 1.5, lower: 1, upper: 2 })).toMatchObject({
      lower: 1,
      upper: 2,
      value: 1.5,
    })
  })
})

test('a length without a sign can’t lie below nought: less of the bell counts', () => {
  const asked = { value: 0.05, u: 0.06, upper: 0.15, changes: { uncertaintyShareAtMost: 1 } }
  const flatness = judge(asked).decision?.conformanceProbability
  const drop = judge({ ...asked, changes: { ...asked.changes, characteristic: 'static-drop' } })
  // Cut at nought the probability is (0.9522 - 0.2023) / (1 - 0.2023) = 0.940.
  expect(flatness).toBeCloseTo(0.94, 3)
  // A drop may be negative: phi(0.1 / 0.06) = 0.9522.
  expect(drop.decision?.conformanceProbability).toBeCloseTo(0.9522, 3)
})

test('a height whose warmth nobody stated is decided by a rule that guards', () => {
  const uncertainty = buildUncertainty(0.1, { leftOut: ['setting', 'temperature', 'alignment'] })
  const changes = { characteristic: 'face-height', uncertainty } as const
  const asked = { value: 1.5, lower: 1, upper: null, rule: 'guard-u95', changes } as const
  expect(judge(asked)).toMatchObject({ verdict: 'pass', why: 'within-limit' })
  expect(judge(asked).decision).not.toBeNull()
})

describe('whatever the numbers are', () => {
  const random = seededUniform(106)
  const cases = Array.from({ length: 400 }, () => ({
    value: random() * 4,
    u: 0.001 + random() * 0.3,
    upper: 1 + random() * 2,
    lower: random() < 0.3 ? 0.2 : null,
  }))

  test('no rule with a guard band accepts what simple acceptance refuses', () => {
    let refusedCount = 0
    for (const one of cases) {
      if (judge(one).verdict !== 'fail') continue
      refusedCount += 1
      for (const rule of decisionRules) {
        const { verdict } = judge({ ...one, rule })
        expect(['fail', 'conditional-fail', 'undecidable'], rule).toContain(verdict)
      }
    }
    expect(refusedCount).toBeGreaterThan(50)
  })

  test('a pass by four outcomes is a pass by the guard band of U, and the other way about', () => {
    let passCount = 0
    for (const one of cases) {
      const isPass = judge({ ...one, rule: 'four-outcomes' }).verdict === 'pass'
      if (isPass) passCount += 1
      expect(judge({ ...one, rule: 'guard-u95' }).verdict === 'pass').toBe(isPass)
    }
    expect(passCount).toBeGreaterThan(50)
  })

  test('a verdict and its reason agree', () => {
    const reasons: Readonly<Record<string, readonly string[]>> = {
      pass: ['within-limit'],
      'conditional-pass': ['within-guard'],
      'conditional-fail': ['beyond-within-guard'],
      fail: ['beyond-limit', 'within-guard'],
      undecidable: ['not-proven', 'uncertainty-too-large'],
    }
    for (const one of cases) {
      for (const rule of decisionRules) {
        const { verdict, why } = judge({ ...one, rule })
        expect(reasons[verdict], `${verdict} ${why}`).toContain(why)
      }
    }
  })
})
