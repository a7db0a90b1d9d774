import { describe, expect, it } from 'vitest'
import type { Fault } from '../../src/domain/fault.ts'
import {
  type ConformityRequest,
  parseConformityRequest,
} from '../../src/domain/parse-conformity-request.ts'

const least = { value: 1.9, standardUncertainty: 0.12, upperLimit: 2, rule: 'simple' }

function parsed(input: Record<string, unknown>): ConformityRequest {
  const got = parseConformityRequest({ ...least, ...input })
  if (!got.ok) throw new Error(JSON.stringify(got.faults))
  return got.value
}

function faults(input: Record<string, unknown>): readonly Fault[] {
  const got = parseConformityRequest({ ...least, ...input })
  if (got.ok) throw new Error('was not refused')
  return got.faults
}

const kinds = (input: Record<string, unknown>) =>
  faults(input).map((one) => `${one.field} ${one.kind}`)

describe('parseConformityRequest', () => {
  it('fills in 2 u, 95 %, a third and a quantity of either sign', () => {
    expect(parsed({})).toEqual({
      value: 1.9,
      standardUncertainty: 0.12,
      expandedUncertainty: 0.24,
      lowerLimit: undefined,
      upperLimit: 2,
      rule: 'simple',
      probability: 0.95,
      isNonNegative: false,
      uncertaintyShareAtMost: 1 / 3,
      prior: null,
    })
  })

  it('takes numbers and texts, with point or comma, and a lower limit alone', () => {
    const got = parsed({ value: '1,9', upperLimit: null, lowerLimit: '0.5', probability: '0.99' })
    expect([got.value, got.lowerLimit, got.upperLimit, got.probability]).toEqual([
      1.9,
      0.5,
      undefined,
      0.99,
    ])
  })

  it.each([
    [true, true],
    ['yes', true],
    [false, false],
    ['', false],
    [null, false],
  ])('reads %o as a quantity that is not below zero: %s', (nonNegative, isNonNegative) => {
    expect(parsed({ nonNegative }).isNonNegative).toBe(isNonNegative)
  })

  it('takes a prior of either shape', () => {
    const prior = { mean: 1, standardDeviation: 0.5, shape: 'gamma' } as const
    expect(parsed({ prior }).prior).toEqual(prior)
    const around = { mean: -1, standardDeviation: 5, shape: 'normal' } as const
    expect(parsed({ prior: around }).prior).toEqual(around)
  })

  it.each([
    [{ value: '' }, 'value empty'],
    [{ value: 'two' }, 'value not-a-number'],
    [{ standardUncertainty: -0.1 }, 'standardUncertainty below'],
    [{ upperLimit: undefined }, 'upperLimit limit-needed'],
    [{ lowerLimit: 2 }, 'lowerLimit lower-not-below'],
    [{ rule: undefined }, 'rule empty'],
    [{ rule: 'guess' }, 'rule not-a-choice'],
    [{ probability: 0.5 }, 'probability below'],
    [{ probability: 1 }, 'probability above'],
    [{ nonNegative: 'maybe' }, 'nonNegative not-a-choice'],
    [{ expandedUncertainty: 0.11 }, 'expandedUncertainty below'],
    [{ uncertaintyShareAtMost: 1.1 }, 'uncertaintyShareAtMost above'],
    [{ uncertaintyShareAtMost: 0 }, 'uncertaintyShareAtMost below'],
    [{ value: -4, nonNegative: true }, 'value too-far-below-zero'],
    [{ colour: 'red' }, 'colour unknown-field'],
    [{ prior: 'known' }, 'prior not-an-object'],
    [{ prior: { mean: 1, standardDeviation: 0.5 } }, 'prior.shape empty'],
    [{ prior: { mean: 0, standardDeviation: 1, shape: 'gamma' } }, 'prior.mean below'],
    [
      { prior: { mean: 1, standardDeviation: 1.1, shape: 'gamma' } },
      'prior.standardDeviation above',
    ],
    [
      { prior: { mean: 1, standardDeviation: 0.001, shape: 'gamma' } },
      'prior.standardDeviation below',
    ],
    [
      { standardUncertainty: 0, prior: { mean: 1, standardDeviation: 1, shape: 'normal' } },
      'standardUncertainty below',
    ],
    [
      { prior: { mean: 1, standardDeviation: 1, shape: 'normal', count: 4 } },
      'prior.count unknown-field',
    ],
  ])('refuses %o', (input, fault) => {
    expect(kinds(input)).toEqual([fault])
  })

  it('names a faulty limit once, whatever the other is', () => {
    expect(kinds({ lowerLimit: 'x', upperLimit: -1 })).toEqual(['lowerLimit not-a-number'])
    expect(kinds({ lowerLimit: 'x', upperLimit: undefined })).toEqual(['lowerLimit not-a-number'])
  })
})
