import { beforeEach, describe, expect, it } from 'vitest'
import { lampIds } from '../../src/science/optics/lamps.ts'
import { buildShop } from '../support/build-shop.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let app: TestApp
beforeEach(() => {
  app = testApp(buildShop().store)
})

const ask = async (query: string, as = 'tess') => {
  const answer = await app.get(`/calculator?${query}`, as)
  return { status: answer.status, page: await answer.text() }
}

describe('the calculator for people', () => {
  it('opens for a customer too, with helium and its table', async () => {
    const { status, page } = await ask('', 'cora')
    expect(status).toBe(200)
    expect(page).toContain('587.5618 nm')
    expect(page).toContain('Published')
    // 9 helium bands: 9 × 0.2937809 µm = 2.6440 µm = 104.10 µin.
    expect(page).toContain('>2.6440<')
    expect(page).toContain('>104.10<')
  })

  it('answers from the address alone, seen at a slant', async () => {
    const { page } = await ask('lamp=helium&quantity=bands&value=3&viewingAngleDeg=30')
    // 3 helium bands are 0.8813 µm from straight above; × 1.1547 at 30° is 1.0177 µm.
    expect(page).toContain('>1.0177<')
    expect(page).toMatch(/name="value"[^>]*value="3"/)
  })

  it('goes back from microinches and microns to bands', async () => {
    // 34.8 µin = 0.88392 µm; under helium 3.009 bands.
    expect((await ask('quantity=uin&value=34.8')).page).toContain('>3.009<')
    // 0.90 µm / 0.2937809 µm = 3.0635 bands.
    expect((await ask('quantity=um&value=0,90')).page).toContain('>3.064<')
  })

  it('knows every lamp and says how sure its wavelength is', async () => {
    for (const lamp of lampIds) expect((await ask(`lamp=${lamp}&value=1`)).status).toBe(200)
    expect((await ask('lamp=sodium-d1')).page).toContain('From memory')
    expect((await ask('lamp=green-led-525')).page).toContain('Common practice, no source')
  })

  it.each([
    ['value=two', 'Enter a plain number'],
    ['value=-1', 'Enter a value from 0 to 1000.'],
    ['value=1001', 'Enter a value from 0 to 1000.'],
    ['value=1&viewingAngleDeg=81', 'Enter a value from 0 to 80.'],
    ['lamp=candle', 'Choose one of:'],
    ['quantity=miles', 'Choose one of:'],
  ])('refuses %s beside the field', async (query, says) => {
    const { status, page } = await ask(query)
    expect(status).toBe(422)
    expect(page).toContain(says)
  })

  it('gives back what was typed, escaped', async () => {
    const { page } = await ask(`value=${encodeURIComponent('"><b>')}`)
    expect(page).toContain('value="&quot;&gt;&lt;b&gt;"')
  })

  it('sends only the parts that change while somebody types', async () => {
    const answer = await app.get('/calculator?value=3x', 'tess', { 'hx-request-type': 'partial' })
    const text = await answer.text()
    expect(answer.status).toBe(200)
    expect(text).not.toContain('<html')
    expect(text).toContain('Enter a plain number')
  })
})
