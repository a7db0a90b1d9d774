import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { demoAccounts } from '../../fixtures/demo/accounts.ts'
import { expectAccessible, launchBrowser, signIn, sizes, watch } from '../support/browser.ts'
import { type DemoServer, startDemo } from '../support/demo-server.ts'

let server: DemoServer
let browser: Browser

beforeAll(async () => {
  server = await startDemo()
  browser = await launchBrowser()
})
afterAll(async () => {
  await browser?.close()
  await server?.stop()
})

/** Taps where the hand of a clock points, on the ring. */
async function tap(page: Page, hour: number): Promise<void> {
  const svg = page.locator('[data-clock] svg')
  await svg.scrollIntoViewIfNeeded()
  const box = (await svg.boundingBox())!
  const [x, y] = [Math.sin((hour * Math.PI) / 6), -Math.cos((hour * Math.PI) / 6)]
  await page.mouse.click(
    box.x + box.width / 2 + x * box.width * 0.3,
    box.y + box.height / 2 + y * box.height * 0.3,
  )
}

const placeOf = (page: Page) =>
  page.evaluate(() => document.querySelector('[data-clock] path.fill-accent')?.getAttribute('d'))

test('taps on the clock face draw the place, and the page says which comes next', async () => {
  const page = await (await browser.newContext({ viewport: sizes.tablet })).newPage()
  await signIn(page, server.origin, demoAccounts.find((one) => one.name === 'tamsin')!)
  const faults = watch(page)
  const number = server.ask(
    `SELECT number FROM work_order WHERE stage = 'lapping' AND decontamination <> 'not-stated'
     ORDER BY id DESC`,
  )
  await page.goto(`${server.origin}/work-orders/${number}/findings/new`)
  const said = page.locator('[data-clock-says]')
  const lone = page.locator('[data-clock] line.stroke-accent')
  await said.getByText('Tap where it begins.').waitFor()
  expect(await placeOf(page)).toBeUndefined()

  await tap(page, 10)
  expect(await said.textContent()).toBe('It begins at 10. Tap where it ends, clockwise.')
  expect([await lone.count(), await placeOf(page)]).toEqual([1, undefined])
  await tap(page, 2)
  expect(await said.textContent()).toContain('From 10 to 2 o’clock.')
  expect(await page.inputValue('select[name=fromHour]')).toBe('10')
  expect(await page.inputValue('select[name=toHour]')).toBe('2')
  expect(await lone.count()).toBe(0)
  const tapped = await placeOf(page)
  expect(tapped).toBeDefined()

  await page.selectOption('select[name=radialPlace]', 'inner-edge')
  const inner = await placeOf(page)
  expect(inner).not.toBe(tapped)
  await expectAccessible(page)

  // The server draws the same from the same fields.
  await page.locator('main').getByRole('button', { name: 'Record the finding' }).click()
  await page.locator('.field-error').first().waitFor()
  expect(await placeOf(page)).toBe(inner)

  await tap(page, 4)
  expect(await page.inputValue('select[name=fromHour]')).toBe('4')
  expect(await page.inputValue('select[name=toHour]')).toBe('')
  await tap(page, 4)
  expect(await said.textContent()).toContain('All round')
  await page.selectOption('select[name=fromHour]', '')
  expect(await said.textContent()).toBe('It ends at 4. Tap where it begins.')
  await tap(page, 1)
  expect(await said.textContent()).toContain('From 1 to 4 o’clock.')
  // A refused form is a failed load to the browser's console, and is meant to be one.
  expect(faults.filter((one) => !one.includes('422'))).toEqual([])
})
