import { beforeEach, describe, expect, it } from 'vitest'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf } from '../support/cast.ts'
import { freshTest } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
let path = ''

beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
  const { id } = addStaticTest(shop.store, freshTest(shop), actorOf(shop.cast.tess))
  path = `/work-orders/${shop.workOrder.number}/results/static-test-leak/${id}`
})

const read = async (query = '') => {
  const answer = await app.get(`${path}${query}`, 'tess')
  return { status: answer.status, text: (await answer.text()).replaceAll(/\s+/g, ' ') }
}

describe('the page of a leak', () => {
  it('tells it in every unit, with the state that it is of', async () => {
    const { status, text } = await read()
    expect(status).toBe(200)
    for (const unit of ['mbar·L/s', 'Torr·L/s', 'sccm', 'scfh', 'ft³/h', 'mol/s', 'g/h']) {
      expect(text).toContain(`>${unit}<`)
    }
    for (const state of ['20 °C and 101.325 kPa', '60 °F and 101.325 kPa', 'as dry air']) {
      expect(text).toContain(state)
    }
    expect(text).toContain('It is no test and no result.')
  })

  it('estimates it for another gas, with what that assumes', async () => {
    const { status, text } = await read('?testGas=air&gas=helium&pressureKPaGauge=500')
    expect(status).toBe(200)
    expect(text).toMatch(/About .* of helium: an estimate\./)
    expect(text).toContain('viscosities at 20 °C: air 18.2 µPa·s, helium 19.6 µPa·s')
    expect(text).toContain('a gap that neither opens nor closes')
  })

  it('says beside the field what is wrong, and keeps what was typed', async () => {
    const { status, text } = await read('?testGas=air&gas=air&pressureKPaGauge=much')
    expect(status).toBe(422)
    expect(text).toContain('value="much"')
    expect(text).toContain('Enter a plain number')
    expect(text).not.toContain('an estimate.')
  })

  it('is not told for a drop', async () => {
    const { text } = await (async () => {
      const answer = await app.get(path.replace('-leak/', '-drop/'), 'tess')
      return { text: await answer.text() }
    })()
    expect(text).not.toContain('The same leak in other units')
  })
})
