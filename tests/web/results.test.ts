import { beforeEach, describe, expect, it } from 'vitest'
import { computeFlatness } from '../../src/domain/compute-flatness.ts'
import { computeStaticTest } from '../../src/domain/compute-static-test.ts'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { buildStaticTest, builtAccuracy } from '../support/build-static-test.ts'
import { actorOf } from '../support/cast.ts'
import { anotherOrder, freshReading, freshTest, workAndRelease } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
})

const order = '/work-orders/W-2026-0001'
const record = (...changes: Parameters<typeof freshReading>) =>
  addFlatnessReading(shop.store, freshReading(...changes), actorOf(shop.cast.tess))
const read = async (path: string, as = 'tess') => {
  const answer = await app.get(`${order}/results/${path}`, as)
  return { status: answer.status, text: await answer.text() }
}

/** A value set large, and what follows ± beside it. */
const figure = (value: string, doubt: string) =>
  new RegExp(`>${value}</span> <span class="result-doubt">${doubt}<`)

describe('the page of one result', () => {
  it('shows the figure, the budget line by line and what it leaves out', async () => {
    const { id } = record(shop)
    const { status, text } = await read(`flatness-reading/${id}`)
    expect(status).toBe(200)
    expect(text).toContain('Flatness: rotating face')
    // 2 helium bands, U 0.10 um: a quarter band and a flat of 0.05 um.
    expect(text).toMatch(figure('0.59', '± 0.10'))
    for (const word of ['reading the bands', 'flatness of the optical flat', 'rectangular']) {
      expect(text).toContain(word)
    }
    // 0.25 / √3 band by 0.29378 µm a band.
    expect(text).toContain('>0.0424<')
    expect(text).toContain('The expanded uncertainty is 2 times the standard uncertainty')
    // (0.0424 / 0.0513)² = 68.3 % of the variance.
    expect(text).toContain('Most comes from: reading the bands, 68.3 % of the variance.')
    expect(text).toContain('Left out, because nobody stated it')
    expect(text).toContain('<li>viewing angle</li>')
  })

  it('begins with the instrument that nobody stated, and gives no probability', async () => {
    const unstated = {
      lampId: 'helium',
      flatToleranceUm: null,
      flatStandardUncertaintyUm: null,
    } as const
    const changes = computeFlatness(buildFlatnessReading(), unstated)
    const { id } = record(shop, 'rotating-face', changes)
    const { text } = await read(`flatness-reading/${id}`)
    expect(text).toContain('an instrument may be is not known: flatness of the optical flat.')
    expect(text).not.toContain('Most comes from')
    expect(text).toContain('Missing from the budget: flatness of the optical flat.')
    expect(text).not.toContain('Probability that it keeps the limit')
    expect(text).toContain('Within the limit.')
  })

  it('shows what it was compared with, by which rule, and both risks', async () => {
    const { id } = record(shop)
    const { text } = await read(`flatness-reading/${id}`)
    expect(text).toContain('≤ 0.881 µm (34.7 µin)')
    expect(text).toContain('Simple acceptance')
    expect(text).toContain('Risk of accepting what is beyond the limit')
    expect(text).toContain('Probability that it keeps the limit')
    expect(text).toContain('L-01')
    expect(text).toContain('In calibration, due 2027-01-15')
  })

  it('says in words what few counts do to the factor', async () => {
    const uncertainty = {
      ...freshReading(shop).uncertainty!,
      coverageFactor: 2.776,
      effectiveDegreesOfFreedom: 4,
    }
    const { id } = record(shop, 'rotating-face', { uncertainty })
    const { text } = await read(`flatness-reading/${id}`)
    expect(text).toContain('4.00 effective degrees of freedom')
    expect(text).toContain('coverage factor 2.78')
  })

  it('is there for the two figures of a static test', async () => {
    const { id } = addStaticTest(shop.store, freshTest(shop), actorOf(shop.cast.tess))
    const leak = await read(`static-test-leak/${id}`)
    expect(leak.text).toContain('Leak rate: whole seal')
    expect(leak.text).toContain('temperature at the start')
    const drop = await read(`static-test-drop/${id}`)
    expect(drop.text).toContain('Pressure drop: whole seal')
    // √2 x 30 Pa, k = 2.
    expect(drop.text).toMatch(figure('1.000', '± 0.085'))
    expect(drop.text).not.toContain('temperature at the start')
    expect(drop.text).not.toContain('not corrected')
  })

  it('says that an error in the budget is not corrected', async () => {
    const known = { ...builtAccuracy, pressureErrorPa: 90 }
    const { dropUncertainty } = computeStaticTest(buildStaticTest(), known)
    const fresh = freshTest(shop, { dropUncertainty })
    const { id } = addStaticTest(shop.store, fresh, actorOf(shop.cast.tess))
    const { text } = await read(`static-test-drop/${id}`)
    expect(text).toContain('error of the gauge at the start')
    expect(text).toContain('The readings are not corrected for the error of their instrument.')
  })

  it('says of an old record that no budget was kept, and makes none up', async () => {
    const old = { uncertainty: null, budgetInput: null }
    const { id } = record(shop, 'rotating-face', old)
    const { text } = await read(`flatness-reading/${id}`)
    expect(text).toContain('This record is older than uncertainty budgets')
    expect(text).toContain('>0.588<')
  })

  it('says of a test with silent instruments that nothing is known', async () => {
    const budgetInput = { volumeRelative: null, pressurePa: null, temperatureK: null, timeS: 1 }
    const silent = freshTest(shop, { leakUncertainty: null, dropUncertainty: null, budgetInput })
    const { id } = addStaticTest(shop.store, silent, actorOf(shop.cast.tess))
    const { text } = await read(`static-test-leak/${id}`)
    expect(text).toContain('Neither the papers of the instruments nor who recorded it')
  })

  it('has no figure for an unreadable face', async () => {
    const { id } = record(shop, 'rotating-face', { pattern: 'unreadable' })
    const { status, text } = await read(`flatness-reading/${id}`)
    expect(status).toBe(200)
    expect(text).toContain('No bands could be read, so there is no figure and no uncertainty.')
  })

  it('says that a record was replaced', async () => {
    const { id } = record(shop)
    record(shop, 'rotating-face', { replacesId: id, reason: 'wrong band' })
    expect((await read(`flatness-reading/${id}`)).text).toContain('replaced by a newer one')
  })

  it('runs trials of the formula that was kept, the same for the same seed', async () => {
    const { id } = record(shop)
    const asked = await read(`flatness-reading/${id}`)
    expect(asked.text).toContain('Run 1 000 000 trials')
    const path = `flatness-reading/${id}?trials=100000&seed=7`
    const [first, again, other] = await Promise.all([
      read(path),
      read(path),
      // A third at once would be told to wait.
      read(path).then(() => read(`flatness-reading/${id}?trials=100000&seed=8`)),
    ])
    const answerOf = (text: string) => text.slice(text.indexOf('id="trials"'))
    expect(first.status).toBe(200)
    expect(first.text).toContain('Trials, as much below as above')
    expect(first.text).toContain('Each interval covers 95.4 %.')
    expect(first.text).toContain('(JCGM 101, clause 8')
    expect(first.text).toContain('<title id="trials-plot-title">')
    expect(answerOf(again.text)).toBe(answerOf(first.text))
    expect(answerOf(other.text)).not.toBe(answerOf(first.text))
  })

  it('refuses a seed or a count that is none, beside the field', async () => {
    const { id } = record(shop)
    for (const query of ['trials=1000000&seed=x', 'trials=1000000&seed=-1', 'trials=9&seed=1']) {
      const { status, text } = await read(`flatness-reading/${id}?${query}`)
      expect(status, query).toBe(422)
      expect(text).toContain('field-error')
    }
  })

  it('says that there is nothing to try without a formula', async () => {
    const uncertainty = { ...freshReading(shop).uncertainty!, model: null }
    const { id } = record(shop, 'rotating-face', { uncertainty })
    const { text } = await read(`flatness-reading/${id}?trials=1000000&seed=1`)
    expect(text).toContain('No formula was kept with this result')
  })

  it('is not found under another order, kind or id', async () => {
    const { id } = record(shop)
    for (const path of [
      `static-test-leak/${id}`,
      `lamp/${id}`,
      'flatness-reading/99',
      'flatness-reading/x',
    ]) {
      expect((await read(path)).status, path).toBe(404)
    }
    const second = anotherOrder(shop)
    const strange = await app.get(
      `/work-orders/${second.number}/results/flatness-reading/${id}`,
      'tess',
    )
    expect(strange.status).toBe(404)
  })

  it('is the customer’s once their order is released, and nobody else’s', async () => {
    const { id } = record(shop)
    expect((await read(`flatness-reading/${id}`, 'cora')).status).toBe(404)
    workAndRelease(shop)
    const own = await read(`flatness-reading/${id}`, 'cora')
    expect(own.status).toBe(200)
    expect(own.text).toContain(`href="/seals/${shop.seal.id}"`)
    expect((await read(`flatness-reading/${id}`, 'olga')).status).toBe(404)
  })
})
