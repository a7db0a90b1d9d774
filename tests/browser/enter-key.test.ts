import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { demoAccounts } from '../../fixtures/demo/accounts.ts'
import { launchBrowser, signIn, sizes } from '../support/browser.ts'
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

/** Without scripts: the browser alone decides which button the key presses. */
async function person(name: string): Promise<Page> {
  const context = await browser.newContext({ viewport: sizes.desktop, javaScriptEnabled: false })
  const page = await context.newPage()
  await signIn(page, server.origin, demoAccounts.find((one) => one.name === name)!)
  return page
}

async function enter(page: Page, field: string): Promise<void> {
  await page.locator(field).focus()
  await Promise.all([page.waitForEvent('domcontentloaded'), page.keyboard.press('Enter')])
}

test('the Enter key works the model out, and adds no row', async () => {
  const page = await person('tamsin')
  await page.goto(`${server.origin}/calculator/uncertainty`)
  const rows = page.locator('input[name^="quantities["][name$=".name"]')
  const before = await rows.count()
  for (const field of ['input[name=model]', 'input[name="quantities[0].value"]']) {
    await enter(page, field)
    const asked = new URL(page.url()).searchParams
    expect(asked.get('model')).not.toBeNull()
    expect(asked.has('more')).toBe(false)
    expect(await rows.count()).toBe(before)
  }
  // The button itself still adds one.
  await Promise.all([page.waitForEvent('domcontentloaded'), page.click('button[name=more]')])
  expect(await rows.count()).toBe(before + 1)
})

test('the Enter key stores a limit set, or says what it lacks, and adds no limit', async () => {
  const page = await person('ingrid')
  await page.goto(`${server.origin}/limit-sets/new`)
  const limits = page.locator('#limits li.job')
  const before = await limits.count()
  await enter(page, 'input[name=name]')
  expect(await limits.count()).toBe(before)
  // Without a name the form is refused: it was not taken for a wish for one more limit.
  expect(await page.locator('#name-error').count()).toBe(1)
})
