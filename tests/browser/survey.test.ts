import type { Browser, Page } from 'playwright-core'
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

/** E13 of the facts, in mm, with a closing reading. */
const readings = ['0', '0.007', '0.024', '0.038', '0.04', '0.033', '0.016', '0.002', '0']
const title = '[data-spot-title]'

async function technician(hasScript: boolean): Promise<{ page: Page; faults: string[] }> {
  const context = await browser.newContext({
    viewport: sizes.tablet,
    javaScriptEnabled: hasScript,
  })
  const page = await context.newPage()
  const faults = watch(page)
  await signIn(page, server.origin, demoAccounts.find((one) => one.name === 'tamsin')!)
  return { page, faults }
}

async function begin(page: Page): Promise<void> {
  const number = server.ask("SELECT number FROM work_order WHERE stage = 'lapping' ORDER BY id")
  await page.goto(`${server.origin}/work-orders/${number}/run-out-surveys/new`)
  await page.locator('input[name=characteristic][value=sleeve-run-out]').check()
  await page.locator('input[name=condition][value=as-found]').check()
  await page.locator('input[name=place][value=between-centres]').check()
  await page.locator('input[name=turned][value=part]').check()
  await page.locator('input[name=direction][value=clockwise]').check()
  const dial = server.ask("SELECT id FROM instrument WHERE number = 'D-01'")
  await page.selectOption('select[name=instrumentId]', dial)
  await page.selectOption('select[name=unit]', 'mm')
  await page.getByRole('button', { name: 'Begin the survey' }).click()
  await page.waitForURL(/run-out-surveys\/\d+$/)
}

test('a turn is read with the keyboard alone, through a lost network, and recorded', async () => {
  const { page, faults } = await technician(true)
  await begin(page)
  const url = page.url()
  for (const [index, value] of readings.entries()) {
    await page.waitForFunction(
      (wanted) => document.querySelector('[data-spot-title]')?.textContent === wanted,
      index === 8
        ? 'Closing reading at the first position'
        : `Position ${index + 1}, ${45 * index}°`,
    )
    if (index === 3) await page.context().setOffline(true)
    if (index === 5) {
      await page.waitForFunction(() => /is back: \d of/.test(document.body.textContent ?? ''))
      await page.context().setOffline(false)
      await page.waitForFunction(() => !document.body.textContent?.includes('is back: '))
    }
    // As an indicator types that is plugged in as a keyboard: digits, then Enter.
    await page.keyboard.type(value)
    await page.keyboard.press('Enter')
  }
  await page.waitForFunction(() => document.body.textContent?.includes('Every position is read.'))
  const text = await page.locator('main').textContent()
  expect(text).toContain('42.6')
  expect(text).toContain('169.8°')
  await page.getByRole('button', { name: 'Record it' }).click()
  await page.waitForURL(/recorded=measured-value/)
  await page.goto(url)
  await page.getByRole('link', { name: 'its result' }).click()
  await page.waitForURL(/results\/measured-value/)
  expect(await page.locator('h1').textContent()).toContain('Sleeve run-out')
  // Going without a network on purpose is no fault of the page.
  expect(faults.filter((one) => !/ERR_INTERNET_DISCONNECTED|^load: /.test(one))).toEqual([])
})

test('readings are tapped as graduations or on the dial, and a wrong one is read again', async () => {
  const { page, faults } = await technician(true)
  await begin(page)
  const value = page.locator('input[name=value]')
  await page.getByRole('button', { name: '+10 graduations', exact: true }).click()
  await page.getByRole('button', { name: '−1 graduation', exact: true }).click()
  expect(await value.inputValue()).toBe('0.09')
  const gauge = page.locator('[data-gauge] svg')
  await gauge.scrollIntoViewIfNeeded()
  const box = (await gauge.boundingBox())!
  // A quarter turn to the right: 25 graduations of 0.01 mm.
  await page.mouse.click(box.x + box.width * 0.85, box.y + box.height / 2)
  expect(await value.inputValue()).toBe('0.25')
  await page.keyboard.press('Enter')
  await page.waitForFunction(
    (selector) => document.querySelector(selector)?.textContent === 'Position 2, 45°',
    title,
  )
  await page.getByRole('link', { name: 'Read again' }).click()
  await page.waitForFunction(
    (selector) => document.querySelector(selector)?.textContent === 'Position 1, 0°',
    title,
  )
  await page.keyboard.type('0,02')
  await page.keyboard.press('Enter')
  await page.waitForFunction(() => document.body.textContent?.includes('overtaken'))
  expect(faults).toEqual([])
})

test('an indicator on a serial port sends lines, and what is no reading is told', async () => {
  const { page, faults } = await technician(true)
  // Chromium without a screen has no ports: one that sends three lines and closes stands in.
  await page.addInitScript(() => {
    const lines = ['+0.012 mm\\r\\nERR', '\\r\\n-0,03\\r\\n'].map((one) => JSON.parse(`"${one}"`))
    const port = {
      open: async () => undefined,
      readable: new ReadableStream({
        async start(controller) {
          for (const line of lines) {
            await new Promise((done) => setTimeout(done, 400))
            controller.enqueue(new TextEncoder().encode(line))
          }
          controller.close()
        },
      }),
    }
    Object.defineProperty(navigator, 'serial', { value: { requestPort: async () => port } })
  })
  await begin(page)
  await page.getByRole('button', { name: 'Listen to an indicator' }).click()
  await page.waitForFunction(
    (selector) => document.querySelector(selector)?.textContent === 'Position 3, 90°',
    title,
  )
  await page.waitForTimeout(300)
  await page.reload()
  const table = await page.locator('main').textContent()
  expect(table).toContain('+0.012 mm')
  expect(table).toContain('-0,03 mm')
  expect(faults).toEqual([])
})

test('without a script the form posts and asks for the next position', async () => {
  const { page } = await technician(false)
  await begin(page)
  await page.fill('input[name=value]', '0.01')
  await page.getByRole('button', { name: 'Keep and go on' }).click()
  expect(await page.locator(title).textContent()).toBe('Position 2, 45°')
  await page.fill('input[name=value]', 'much')
  await page.getByRole('button', { name: 'Keep and go on' }).click()
  expect(await page.locator('main').textContent()).toContain('Enter a plain number')
  expect(await page.inputValue('input[name=value]')).toBe('much')
})
