import { describe, expect, test } from 'vitest'
import type { UncertaintyAnswer } from '../../../src/domain/answer-uncertainty.ts'
import type { MonteCarloResult } from '../../../src/science/uncertainty/monte-carlo.ts'
import { published } from '../../science/uncertainty/gum-models.ts'
import { testApp } from '../../support/test-app.ts'

const path = '/api/v1/calculate/uncertainty'
const { postJson } = testApp()
const rectangular = (name: string, halfWidth: number) => {
  return { name, value: 0, distribution: 'rectangular', halfWidth }
}
type Answer = Partial<UncertaintyAnswer> & { readonly monteCarlo?: MonteCarloResult }
const least = { quantities: [rectangular('a', 1)], model: '2 * a' }

async function answer(body: Record<string, unknown>): Promise<Answer> {
  const response = await postJson(path, { ...least, ...body }, 'tess')
  expect(response.status, JSON.stringify(body)).toBe(200)
  return (await response.json()) as Answer
}

async function refused(body: Record<string, unknown>): Promise<Record<string, string>> {
  const response = await postJson(path, { ...least, ...body }, 'tess')
  expect(response.status, JSON.stringify(body)).toBe(422)
  const { errors } = (await response.json()) as { errors: { field: string; message: string }[] }
  return Object.fromEntries(errors.map((one) => [one.field, one.message]))
}

describe('the calculator of uncertainty', () => {
  test('answers the linear budget of a half width', async () => {
    const got = await answer({})
    expect(got).toMatchObject({
      value: 0,
      effectiveDegreesOfFreedom: null,
      isNonlinear: false,
      method: 'uncertainty/model 1',
      probability: 0.95,
    })
    // u = 2 / sqrt 3; the line keeps the standard uncertainty of the quantity and 2 as sensitivity.
    expect(got.standardUncertainty).toBeCloseTo(2 / Math.sqrt(3), 12)
    expect(got.budget).toMatchObject([
      { source: 'a', distribution: 'rectangular', sensitivity: 2, degreesOfFreedom: null },
    ])
    expect(got.coverageFactor).toBeCloseTo(1.959964, 6)
    expect(got).not.toHaveProperty('monteCarlo')
  })

  test('answers the end gauge of JCGM 100 H.1 as it is stated there', async () => {
    const { expression, quantities, probability, printed, recomputed } = published.endGauge
    const got = await answer({ model: expression, quantities, probability })
    expect(got.value).toBe(printed.value)
    expect(Math.round(got.standardUncertainty ?? 0)).toBe(printed.standardUncertainty)
    expect(got.effectiveDegreesOfFreedom).toBeCloseTo(recomputed.effectiveDegreesOfFreedom, 6)
    expect(got.coverageFactor).toBeCloseTo(printed.coverageFactor, 2)
    // H.1.7: the next terms make 34 of 32, which is more than a twentieth.
    expect(Math.round(got.secondOrderStandardUncertainty ?? 0)).toBe(34)
    expect(got.isNonlinear).toBe(true)
  })

  test('takes names as programs write them', async () => {
    const got = await answer({ quantities: [rectangular('delta_p1', 1)], model: '2 * delta_p1' })
    expect(got.budget).toMatchObject([{ source: 'delta_p1', sensitivity: 2 }])
  })

  test('evaluates JCGM 101 9.2.4 by trials, the same for the same seed', async () => {
    const body = {
      quantities: [
        ...['a', 'b', 'c'].map((name) => rectangular(name, Math.sqrt(3))),
        rectangular('d', 10 * Math.sqrt(3)),
      ],
      model: 'a + b + c + d',
      monteCarlo: { trials: 200_000, seed: 7 },
    }
    const got = await answer(body)
    // Published (from memory, recomputed): 19.9 by the linear way, 17.0 by trials, u 10.1.
    expect(got.expandedUncertainty).toBeCloseTo(19.89, 2)
    // 200 000 trials: the end of the interval scatters by some 0.01.
    expect(Math.abs((got.monteCarlo?.symmetricInterval[1] ?? 0) - 17.02)).toBeLessThan(0.06)
    expect(Math.abs((got.monteCarlo?.standardDeviation ?? 0) - 10.149)).toBeLessThan(0.06)
    expect(await answer(body)).toEqual(got)
  })

  test('says that a curved model needs trials', async () => {
    const quantities = ['x', 'y'].map((name) => {
      return { name, value: 0, distribution: 'normal', standardUncertainty: 0.005 }
    })
    const got = await answer({ quantities, model: 'x^2 + y^2' })
    // JCGM 101 9.4, estimate zero: nothing by the linear way, 50e-6 by the next order.
    expect(got.standardUncertainty).toBe(0)
    expect(got.secondOrderStandardUncertainty).toBeCloseTo(50e-6, 10)
    expect(got.isNonlinear).toBe(true)
  })

  test.each([
    [{ model: '' }, 'model'],
    [{ model: '2 * (a' }, 'model'],
    [{ model: '2 * b' }, 'model'],
    [{ model: 'a; process.exit()' }, 'model'],
    [{ model: '1 / a' }, 'model'],
    [{ quantities: [] }, 'quantities'],
    [
      { quantities: [{ ...rectangular('a', 1), standardUncertainty: 1 }] },
      'quantities[0].standardUncertainty',
    ],
    [
      { quantities: [{ ...rectangular('a', 1), distribution: 'normal' }] },
      'quantities[0].halfWidth',
    ],
    [
      { quantities: [{ name: 'a', value: 0, distribution: 't', standardUncertainty: 1 }] },
      'quantities[0].degreesOfFreedom',
    ],
    [{ quantities: [{ ...rectangular('sin', 1) }] }, 'quantities[0].name'],
    [{ quantities: [rectangular('a', 1), rectangular('a', 1)] }, 'quantities[1].name'],
    [{ quantities: [rectangular('_a', 1)] }, 'quantities[0].name'],
    [{ quantities: [rectangular('a b', 1)] }, 'quantities[0].name'],
    [{ quantities: [{ ...rectangular('a', 1), value: '' }] }, 'quantities[0].value'],
    [{ quantities: [rectangular('a', -1)] }, 'quantities[0].halfWidth'],
    [{ quantities: [{ ...rectangular('a', 1), mean: 1 }] }, 'quantities[0].mean'],
    [
      { quantities: [{ ...rectangular('a', 1), distribution: 'round' }] },
      'quantities[0].distribution',
    ],
    [{ quantities: Array.from({ length: 51 }, (_, i) => rectangular(`a${i}`, 1)) }, 'quantities'],
    [{ monteCarlo: { trials: 999 } }, 'monteCarlo.trials'],
    [{ monteCarlo: { trials: 5_000_001 } }, 'monteCarlo.trials'],
    [{ monteCarlo: { trials: 1000, seed: 0.5 } }, 'monteCarlo.seed'],
    [{ monteCarlo: { trials: 1000, speed: 1 } }, 'monteCarlo.speed'],
    [{ monteCarlo: 5 }, 'monteCarlo'],
    [{ quantities: [5] }, 'quantities[0]'],
    [{ quantities: 'a' }, 'quantities'],
    [{ probability: 1 }, 'probability'],
    [{ colour: 'red' }, 'colour'],
  ])('refuses %j by the field %s', async (body, field) => {
    const errors = await refused(body)
    expect(Object.keys(errors)).toContain(field)
    expect(errors[field]?.length).toBeGreaterThan(10)
  })

  test('says of a second quantity with the same name what is wrong with it', async () => {
    const errors = await refused({ quantities: [rectangular('a', 1), rectangular('a', 1)] })
    expect(errors['quantities[1].name']).toBe('Another quantity has this name.')
  })

  test('refuses an uncertainty that no number can hold', async () => {
    const quantities = [rectangular('a', 1e15)]
    const errors = await refused({ quantities, model: '1e300 * a' })
    expect(errors.model).toContain('no finite value')
  })

  test('refuses a model that trials lead where it has no value', async () => {
    const quantities = [{ name: 'a', value: 1, distribution: 'normal', standardUncertainty: 1 }]
    const body = { quantities, model: 'sqrt(a)', monteCarlo: { trials: 1000, seed: 1 } }
    expect((await refused(body)).model).toContain('no finite value')
  })
})
