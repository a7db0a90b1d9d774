import { describe, expect, it } from 'vitest'
import { testApp } from '../support/test-app.ts'

const app = testApp()
const path = '/calculator/uncertainty'
const query = (pairs: Record<string, string>) => `${path}?${new URLSearchParams(pairs)}`
const one = {
  'quantities[0].name': 'a',
  'quantities[0].value': '3',
  'quantities[0].distribution': 'normal',
  'quantities[0].standardUncertainty': '0,1',
  model: '2 * a',
}

describe('the calculator of uncertainty for people', () => {
  it('opens with an example worked out, for a customer too', async () => {
    const answer = await app.get(path, 'cora')
    expect(answer.status).toBe(200)
    const page = await answer.text()
    // 2 bands x 0.58756 µm / (2 cos 0.09) = 0.590 µm; u = 0.25 / sqrt 3 x 0.295 = 0.0426 µm, times 1.96.
    expect(page).toContain('0.590 ± 0.084')
    expect(page).toContain('value="bands"')
  })

  it('answers from the address: value, k, budget', async () => {
    const page = await (await app.get(query(one), 'tess')).text()
    expect(page).toContain('6.00 ± 0.39') // 1.96 x 0.2
    expect(page).toContain('k = 1.96')
  })

  it('runs a million trials where they are asked for, and draws them', async () => {
    const page = await (
      await app.get(query({ ...one, trials: '1000000', seed: '2' }), 'tess')
    ).text()
    expect(page).toContain('1,000,000 trials, seed 2.')
    expect(page).toContain('trials-plot-title')
  })

  it('keeps what was typed, escaped, beside its fault', async () => {
    const answer = await app.get(query({ ...one, model: '2 * <b>' }), 'tess')
    expect(answer.status).toBe(422)
    const page = await answer.text()
    expect(page).toContain('value="2 * &lt;b&gt;"')
    expect(page).toContain('Something does not fit at character 5.')
  })

  it('adds a row without losing the others', async () => {
    const page = await (await app.get(query({ ...one, more: 'yes' }), 'tess')).text()
    expect(page).toContain('quantities[1].name')
    expect(page).toContain('value="0,1"')
  })

  it('keeps a row of which only the half width was typed, and says what it lacks', async () => {
    const half = {
      ...one,
      'quantities[1].halfWidth': '0.5',
      'quantities[1].distribution': 'normal',
    }
    const answer = await app.get(query(half), 'tess')
    expect(answer.status).toBe(422)
    const page = await answer.text()
    expect(page).toContain('value="0.5"')
    expect(page).toContain('id="quantities[1].name-error"')
  })

  it('says what is wrong beside the row that it is about, also after an empty one', async () => {
    const { model } = one
    const pairs = { model, 'quantities[0].name': '', 'quantities[2].name': 'a' }
    const gap = { ...pairs, 'quantities[2].distribution': 'normal' }
    const page = await (await app.get(query(gap), 'tess')).text()
    // The empty rows are gone, so that the one typed is the first.
    expect(page).toMatch(/name="quantities\[0\]\.name"[^>]*value="a"/)
    expect(page).toContain('id="quantities[0].value-error"')
    expect(page).not.toContain('quantities[1]')
  })

  it('says that there is no quantity at all', async () => {
    const answer = await app.get(query({ model: '2', probability: '0.95' }), 'tess')
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain('id="quantities-error"')
  })
})
