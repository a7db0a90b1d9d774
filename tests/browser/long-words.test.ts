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

async function send(page: Page, action: string): Promise<void> {
  await Promise.all([
    page.waitForEvent('domcontentloaded'),
    page.locator(`form[action="${action}"] button[type=submit]`).first().click(),
  ])
}

/** How far the page is wider than the phone. */
async function overflowPx(page: Page, path: string): Promise<number> {
  await page.goto(`${server.origin}${path}`)
  return page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
}

test('names without a space, as long as they may be, widen no page on a phone', async () => {
  const page = await (await browser.newContext({ viewport: sizes.phone })).newPage()
  await signIn(page, server.origin, demoAccounts.find((one) => one.name === 'marit')!)
  await page.goto(`${server.origin}/customers`)
  await page.fill('[name=name]', 'W'.repeat(120))
  await page.fill('[name=address]', 'Q'.repeat(400))
  await page.fill('[name=contact]', 'C'.repeat(200))
  await send(page, '/customers')
  const customer = new URL(page.url()).pathname
  await page.locator('details.fold summary', { hasText: 'Add a position' }).click()
  await page.fill('[name=tag]', 'T'.repeat(60))
  await page.fill('[name=description]', 'D'.repeat(200))
  await page.fill('[name=serviceFluid]', 'F'.repeat(120))
  await send(page, `${customer}/equipment`)
  await page.goto(`${server.origin}${customer}/seals/new?next=receipt`)
  await page.fill('[name=serial]', 'S'.repeat(60))
  await page.selectOption('[name=equipmentId]', { index: 1 })
  await page.locator('[name=arrangement]').first().check({ force: true })
  await page.fill('[name=shaftDiameterMm]', '60')
  await page.selectOption('[name="components[0].material"]', 'carbon-graphite')
  await page.fill('[name="components[1].material"]', 'M'.repeat(120))
  await send(page, `${customer}/seals`)
  const receipt = `${new URL(page.url()).pathname}${new URL(page.url()).search}`
  await page.fill('[name=reasonForRemoval]', 'R'.repeat(400))
  await send(page, '/work-orders')
  const order = new URL(page.url()).pathname
  expect(order).toMatch(/^\/work-orders\/W-/)
  const seal = `/seals/${new URLSearchParams(receipt.split('?')[1]).get('seal')}`
  const pages = ['/bench', '/work-orders', '/customers', customer, `${customer}/seals/new`]
  for (const path of [...pages, '/work-orders/new', receipt, order, `${order}/limits`, seal]) {
    // A pixel may come of rounding.
    expect(await overflowPx(page, path), path).toBeLessThanOrEqual(1)
  }
})
