import { describe, expect, test } from 'vitest'
import { testApp } from '../../support/test-app.ts'

const path = '/api/v1/calculate/conformity'
const { postJson } = testApp()
const least = { value: 1.9, standardUncertainty: 0.12, upperLimit: 2, rule: 'simple' }

async function answer(body: Record<string, unknown>): Promise<Record<string, unknown>> {
  const response = await postJson(path, { ...least, ...body }, 'tess')
  expect(response.status, JSON.stringify(body)).toBe(200)
  return (await response.json()) as Record<string, unknown>
}

async function refusal(body: unknown): Promise<{ field: string; message: string }[]> {
  const response = await postJson(path, body, 'tess')
  expect(response.status).toBe(422)
  expect(response.headers.get('content-type')).toBe('application/problem+json')
  const { errors } = (await response.json()) as { errors: { field: string; message: string }[] }
  return errors
}

describe('conformity', () => {
  test('answers a pass with its probability, its risk and what it was decided by', async () => {
    const got = await answer({ value: 2.8, upperLimit: 3 })
    expect(got).toMatchObject({
      outcome: 'pass',
      acceptanceLimits: { lower: null, upper: 3 },
      rejectionLimits: { lower: null, upper: 3 },
      falseRejectRisk: 0,
      rule: 'simple',
      probability: 0.95,
      method: 'acceptance/conformity 1',
    })
    // Training note: 95.22 % and 4.78 %, two decimals.
    expect((got.conformanceProbability as number) * 100).toBeCloseTo(95.22, 2)
    expect((got.falseAcceptRisk as number) * 100).toBeCloseTo(4.78, 2)
    expect(got.uncertaintyShare).toBeCloseTo(0.08, 12) // rounding
  })

  test.each([
    // ISO 14253-1:2017, limit 0.60, u 0.04, one-sided 95 % (from memory).
    ['guard-probability', 0.52, 'pass'],
    ['guard-probability', 0.55, 'undecidable'],
    ['guard-probability', 0.62, 'undecidable'],
    ['guard-probability', 0.67, 'fail'],
    ['guard-u95', 0.52, 'pass'],
    ['guard-u95', 0.55, 'fail'],
    ['four-outcomes', 0.55, 'conditional-pass'],
    ['four-outcomes', 0.62, 'conditional-fail'],
    ['four-outcomes', 0.69, 'fail'],
    ['simple', 0.6, 'pass'],
  ])('by %s a value of %s below 0.60 is %s', async (rule, value, outcome) => {
    const got = await answer({ value, standardUncertainty: 0.04, upperLimit: 0.6, rule })
    expect(got.outcome).toBe(outcome)
  })

  test('takes a lower limit, both, and a stated probability', async () => {
    const body = { standardUncertainty: 0.05, rule: 'guard-probability' }
    const low = await answer({ ...body, value: 1.2, lowerLimit: 1, upperLimit: null })
    // 1 + 1.645 x 0.05, ISO 14253-1:2017 (from memory)
    expect((low.acceptanceLimits as { lower: number }).lower).toBeCloseTo(1.0822427, 7)
    expect((low.acceptanceLimits as { upper: null }).upper).toBeNull()
    const both = await answer({ ...body, value: 1.5, lowerLimit: 1, probability: 0.99 })
    // 2 - 2.3263 x 0.05
    expect((both.acceptanceLimits as { upper: number }).upper).toBeCloseTo(1.8836826, 7)
    expect(both.probability).toBe(0.99)
  })

  test('cuts what is known at zero where nothing is below', async () => {
    const body = {
      value: 0.05,
      standardUncertainty: 0.06,
      upperLimit: 0.15,
      uncertaintyShareAtMost: 1,
    }
    const got = await answer({ ...body, nonNegative: true })
    expect(got.conformanceProbability).toBeCloseTo(0.9400876863, 9) // SciPy
    const free = await answer({ ...body, nonNegative: false })
    expect(free.conformanceProbability).toBeCloseTo(0.9522096477, 9) // Phi(5/3)
  })

  test('cannot decide where the uncertainty takes up too much of the limit', async () => {
    const got = await answer({ value: 0.5, standardUncertainty: 0.4 })
    expect(got).toMatchObject({ outcome: 'undecidable', isUncertaintyTooLarge: true })
    const asked = await answer({
      value: 0.5,
      standardUncertainty: 0.4,
      uncertaintyShareAtMost: 0.5,
    })
    expect(asked.outcome).toBe('pass')
    const wide = await answer({ value: 1.5, expandedUncertainty: 0.7 })
    expect(wide.outcome).toBe('undecidable')
  })

  test('answers the risks over many items where their scatter is stated', async () => {
    const got = await answer({
      value: 1,
      standardUncertainty: 0.25,
      prior: { mean: 1, standardDeviation: 0.5, shape: 'gamma' },
    })
    // Double integral by SciPy.
    expect(got.globalFalseAcceptRisk).toBeCloseTo(0.008019112, 8)
    expect(got.globalFalseRejectRisk).toBeCloseTo(0.01744457, 8)
  })

  test.each([
    [{ ...least, value: '' }, 'value', 'Enter a value.'],
    [{ ...least, standardUncertainty: -1 }, 'standardUncertainty', 'Enter a value from 0'],
    [{ value: 1, standardUncertainty: 0.1, rule: 'simple' }, 'upperLimit', 'Enter an upper limit'],
    [{ ...least, lowerLimit: 3 }, 'lowerLimit', 'must be below'],
    [{ ...least, rule: 'luck' }, 'rule', 'Choose one of: simple, guard-u95'],
    [{ ...least, probability: 1 }, 'probability', 'Enter a value from 0.501'],
    [{ ...least, probability: 0.5 }, 'probability', 'Enter a value from 0.501'],
    [{ ...least, nonNegative: 'perhaps' }, 'nonNegative', 'Choose one of: true, false'],
    [{ ...least, value: -9, nonNegative: true }, 'value', 'further below zero'],
    [{ ...least, upperlimit: 2 }, 'upperlimit', 'There is no field "upperlimit" here.'],
    [{ ...least, prior: { mean: 1 } }, 'prior.standardDeviation', 'Enter a value.'],
  ])('refuses %o by name', async (body, field, message) => {
    const error = (await refusal(body)).find((one) => one.field === field)
    expect(error?.message).toContain(message)
  })

  test('asks who it is and answers a customer too', async () => {
    expect((await postJson(path, least)).status).toBe(401)
    expect((await postJson(path, least, 'cora')).status).toBe(200)
  })

  test('stands in the description, with all that it takes', async () => {
    const response = await testApp().get('/api/v1/openapi.json')
    const { paths, components } = (await response.json()) as {
      paths: Record<string, unknown>
      components: { schemas: Record<string, { properties: Record<string, unknown> }> }
    }
    expect(paths).toHaveProperty([path])
    const asked = Object.keys(components.schemas.apiConformityRequest?.properties ?? {})
    expect(asked).toContain('nonNegative')
    const got = await answer({ prior: { mean: 1, standardDeviation: 1, shape: 'normal' } })
    const told = Object.keys(components.schemas.apiConformityAnswer?.properties ?? {})
    expect(Object.keys(got).sort()).toEqual(told.sort())
  })
})
