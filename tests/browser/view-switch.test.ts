import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { demoAccounts } from '../../fixtures/demo/accounts.ts'
import { launchBrowser, signIn, sizes, watch } from '../support/browser.ts'
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

test('a reading half entered stays when the view is switched at the lamp', async () => {
  const page = await (await browser.newContext({ viewport: sizes.tablet })).newPage()
  await signIn(page, server.origin, demoAccounts.find((one) => one.name === 'tamsin')!)
  const faults = watch(page)
  const number = server.ask("SELECT number FROM work_order WHERE stage = 'lapping'")
  const form = `${server.origin}/work-orders/${number}/flatness/new`
  await page.goto(form)
  await page.locator('input[name=pattern][value=convex]').check()
  await page.fill('#bands-0', '1.25')
  await page.locator('.top-menu-button').click()
  const lamp = page.locator('.view-switcher-choice[value=lamp]')
  const remembered = page.waitForResponse((one) => one.url() === `${server.origin}/view`)
  await lamp.click()
  expect((await remembered).status()).toBe(303)
  expect(page.url()).toBe(form)
  expect(await page.inputValue('#bands-0')).toBe('1.25')
  expect(await page.locator('html').getAttribute('data-view')).toBe('lamp')
  expect(await lamp.getAttribute('aria-pressed')).toBe('true')
  expect(await page.locator('.view-switcher-choice[aria-pressed=true]').count()).toBe(1)
  // The next page is drawn in it too, and as the device says takes it away again.
  await page.goto(form)
  expect(await page.locator('html').getAttribute('data-view')).toBe('lamp')
  await page.locator('.top-menu-button').click()
  await page.locator('.view-switcher-choice[value=auto]').click()
  expect(await page.locator('html').getAttribute('data-view')).toBeNull()
  expect(faults).toEqual([])
})
