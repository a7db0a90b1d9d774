import { beforeEach, describe, expect, it } from 'vitest'
import { decisionRules } from '../../src/science/acceptance/decision-rule.ts'
import { decisionWords } from '../../views/words/en/decision.ts'
import { buildShop } from '../support/build-shop.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let app: TestApp
beforeEach(() => {
  app = testApp(buildShop().store)
})

const near = { value: '1.9', standardUncertainty: '0.12', upperLimit: '2', rule: 'four-outcomes' }

async function ask(query: Record<string, string>, as = 'tess', headers = {}) {
  const address = `/calculator/conformity?${new URLSearchParams(query)}`
  const answer = await app.get(address, as, headers)
  return { status: answer.status, page: await answer.text() }
}

const fragment = { 'hx-request-type': 'partial' }

describe('the calculator of conformity for people', () => {
  it('opens for a customer too and names every rule with its risk', async () => {
    const { status, page } = await ask({}, 'cora')
    expect(status).toBe(200)
    for (const rule of decisionRules) {
      expect(page).toContain(decisionWords.rule[rule])
      expect(page).toContain(decisionWords.ruleSentence[rule])
    }
    expect(page).toContain('Enter a value, its uncertainty and a limit')
    expect(page).not.toContain('field-error')
  })

  it('leads to the other calculators and is led to', async () => {
    const { page } = await ask({})
    expect(page).toMatch(/href="\/calculator\/conformity" aria-current="page"/)
    expect(page).toMatch(/href="\/calculator\/uncertainty"/)
    const bands = await (await app.get('/calculator', 'tess')).text()
    expect(bands).toMatch(/href="\/calculator" aria-current="page">Bands to microns/)
    expect(bands).toContain('href="/calculator/conformity"')
  })

  it('answers from the address alone, with outcome, risks and picture', async () => {
    const { status, page } = await ask(near)
    expect(status).toBe(200)
    expect(page).toContain('Conditional pass')
    // Phi((2 - 1.9) / 0.12) = 0.7977
    expect(page).toContain('79.8 %')
    expect(page).toContain('The chance that this is wrong is 20.2 %.')
    expect(page).toContain('None, it is not rejected')
    expect(page).toContain('1.90 ± 0.24, at most 2. 20.2 % of what is known lies beyond.')
    // 2 - 0.24 and 2 + 0.24
    expect(page).toContain('>passes to 1.76<')
    expect(page).toContain('>above 2.24<')
    expect(page).toMatch(/name="value"[^>]*value="1.9"/)
  })

  it.each([
    [{ ...near, rule: 'guard-u95' }, 'Fail', 'The chance that this is wrong is 79.8 %.'],
    [{ ...near, rule: 'simple' }, 'Pass', 'The chance that this is wrong is 20.2 %.'],
    [{ ...near, value: '2.1' }, 'Conditional fail', 'Rejected on condition'],
    [
      { ...near, rule: 'guard-probability' },
      'This set-up cannot decide',
      'Neither conformity nor the opposite is proven with a probability of 95.0 %.',
    ],
    [
      { ...near, standardUncertainty: '0.5' },
      'This set-up cannot decide',
      'U takes up 50.0 % of the tolerance, more than 33.3 %.',
    ],
    [
      { ...near, lowerLimit: '1.6', rule: 'guard-u95', uncertaintyShareAtMost: '1' },
      'This set-up cannot decide',
      'The guard bands leave no value that could be accepted.',
    ],
    [{ ...near, standardUncertainty: '0' }, 'Pass', 'The chance that this is wrong is 0.0 %.'],
    [
      {
        ...near,
        lowerLimit: '0.5',
        'prior.mean': '1',
        'prior.standardDeviation': '0.4',
        'prior.shape': 'normal',
      },
      'Conditional pass',
      'Of all items, beyond a limit and accepted',
    ],
  ])('says of %o: %s', async (query, outcome, sentence) => {
    const { status, page } = await ask(query)
    expect(status).toBe(200)
    expect(page).toContain(`<span>${outcome}</span>`)
    expect(page).toContain(sentence)
    expect(page).toContain('<title id="decision-title">')
  })

  it.each([
    [{ ...near, value: 'two' }, 'Enter a plain number'],
    [{ ...near, value: '' }, 'Enter a value.'],
    [{ ...near, upperLimit: '' }, 'Enter an upper limit, a lower limit or both.'],
    [{ ...near, lowerLimit: '2' }, 'The lower limit must be below the upper limit.'],
    [{ ...near, rule: '' }, 'Enter a value.'],
    [{ ...near, rule: 'luck' }, 'Choose one of:'],
    [{ ...near, probability: '1' }, 'Enter a value from 0.501 to 0.999999.'],
    [{ ...near, nonNegative: 'perhaps' }, 'Choose one of:'],
    [{ ...near, expandedUncertainty: '0.1' }, 'Enter a value from 0.12'],
    [{ ...near, 'prior.mean': '1' }, 'Enter a value.'],
  ])('refuses %o beside the field', async (query, says) => {
    const { status, page } = await ask(query)
    expect(status).toBe(422)
    expect(page).toContain(says)
    expect(page).toContain('See the marked fields.')
  })

  it('gives back what was typed, escaped', async () => {
    const { page } = await ask({ ...near, upperLimit: '"><b>', nonNegative: 'yes' })
    expect(page).toContain('value="&quot;&gt;&lt;b&gt;"')
    expect(page).toMatch(/name="nonNegative"[^>]*checked/)
    expect(page).not.toContain('"><b>')
  })

  it('treats a form sent with an empty prior as one without', async () => {
    const empty = { 'prior.mean': '', 'prior.standardDeviation': '', 'prior.shape': '' }
    const { status, page } = await ask({ ...near, ...empty })
    expect(status).toBe(200)
    expect(page).not.toContain('Of all items')
  })

  it('marks nothing that is merely not there yet while somebody types', async () => {
    const typing = await ask({ value: '1.9' }, 'tess', fragment)
    expect(typing.status).toBe(200)
    expect(typing.page).not.toContain('<html')
    expect(typing.page).not.toContain('field-error')
    expect(typing.page).toContain('Enter a value, its uncertainty and a limit')
    const slip = await ask({ ...near, value: '1.9x' }, 'tess', fragment)
    expect([slip.status, slip.page.includes('Enter a plain number')]).toEqual([200, true])
    const done = await ask(near, 'tess', fragment)
    expect(done.page).toContain('Conditional pass')
  })

  it('asks who is there', async () => {
    const answer = await app.get('/calculator/conformity')
    expect(answer.status).toBe(303)
  })
})
