import { expect, it } from 'vitest'
import { buildShop } from '../support/build-shop.ts'
import { testApp } from '../support/test-app.ts'

const app = testApp(buildShop().store)
const order = '/work-orders/W-2026-0001'

it('shows the guide as a page, every step side by side, without script', async () => {
  const text = await (await app.get('/flatness-guide', 'tess')).text()
  expect(text).toContain('<title>Guide to light bands')
  expect(text.match(/<li class="guide-figure">/g)).toHaveLength(5 * 3 + 9 * 3 + 3)
  expect(text).toContain('bands move towards the larger gap')
  expect(text).not.toMatch(/style="/)
})

it('says in figures what a line count shows of a saddle', async () => {
  const text = await (await app.get('/flatness-guide', 'tess')).text()
  // (1 - 0.7^2) / 2 = 0.255 of 2 bands
  expect(text).toContain('0.51 bands or 26')
})

it('is offered beside the reading form, and its buttons join no form that is sent', async () => {
  const form = await (await app.get(`${order}/flatness/new`, 'tess')).text()
  expect(form).toContain('href="/flatness-guide"')
  expect(form).toContain('<form id="guide-steps"></form>')
  const guide = await (await app.get('/flatness-guide', 'tess')).text()
  const radios = guide.match(/<input type="radio"[^>]*>/g) ?? []
  expect(radios).toHaveLength(5 * 4)
  expect(radios.filter((one) => !one.includes('form="guide-steps"'))).toEqual([])
})

it('says what its figure is and what it sees while the reading is entered', async () => {
  const filled = {
    pattern: 'convex',
    'readings[0].directionDeg': '0',
    'readings[0].bands': '2',
    lampInstrumentId: '1',
  }
  const text = await (await app.post(`${order}/flatness/preview`, filled, 'tess')).text()
  expect(text).toContain('Flatness by line count')
  expect(text).toContain('nearly blind to waves around it')
})
