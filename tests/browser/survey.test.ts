import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { launchBrowser } from '../support/browser.ts'
import { type DemoServer, startDemo } from '../support/demo-server.ts'
import { beginSurvey, technicianPage, typeReading, untilAsked } from '../support/survey-pages.ts'

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

const technician = (hasScript: boolean) => technicianPage(browser, server, hasScript)
const begin = (page: Page) => beginSurvey(page, server)

test('a turn is read with the keyboard alone, through a lost network, and recorded', async () => {
  const { page, faults } = await technician(true)
  await begin(page)
  const url = page.url()
  for (const [index, value] of readings.entries()) {
    await untilAsked(page, index + 1)
    if (index === 3) await page.context().setOffline(true)
    if (index === 5) {
      await page.waitForFunction(() => /is back: \d of/.test(document.body.textContent ?? ''))
      await page.context().setOffline(false)
      await page.waitForFunction(() => !document.body.textContent?.includes('is back: '))
    }
    await typeReading(page, value)
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
  // As in a browser that knows no serial ports.
  await page.addInitScript(() => Object.defineProperty(navigator, 'serial', { value: undefined }))
  await begin(page)
  expect(await page.locator('[data-serial]').isHidden()).toBe(true)
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
  // Chromium without a screen has no ports: one that sends what the test hands it stands in.
  await page.addInitScript(() => {
    let send: (text: string) => void = () => undefined
    const readable = new ReadableStream({
      start(controller) {
        send = (text) => controller.enqueue(new TextEncoder().encode(text))
      },
    })
    Object.assign(window, { sendFromPort: (text: string) => send(text) })
    const port = { open: async () => undefined, readable }
    Object.defineProperty(navigator, 'serial', { value: { requestPort: async () => port } })
  })
  await begin(page)
  await page.getByRole('button', { name: 'Listen to an indicator' }).click()
  const send = (text: string) =>
    page.evaluate((sent) => {
      ;(window as unknown as { sendFromPort: (text: string) => void }).sendFromPort(sent)
    }, text)
  // A line may come in two parts.
  await send('+0.012 mm\r\nER')
  await page.waitForFunction(
    (selector) => document.querySelector(selector)?.textContent === 'Position 2, 45°',
    title,
  )
  await send('R\r\n-  0,03\r\n')
  // It stays while readings go on: a position was passed over.
  const leftOut = page.locator('[data-survey-left-out]')
  await leftOut.getByText('no plain reading. It was left out: ERR (Position 2, 45°)').waitFor()
  await page.waitForFunction(
    (selector) => document.querySelector(selector)?.textContent === 'Position 3, 90°',
    title,
  )
  await send('CH1 +0.012 mm\r\n')
  await leftOut.getByText('It was left out: CH1 +0.012 mm (Position 3, 90°)').waitFor()
  await send('0.0005 in\r\n')
  await page.waitForFunction(() =>
    document.body.textContent?.includes(
      'another unit than this survey. It was left out: 0.0005 in',
    ),
  )
  await page.reload()
  const table = await page.locator('main').textContent()
  expect(table).toContain('+0.012 mm')
  expect(table).toContain('-0,03 mm')
  expect(table).toContain('2 of 9 readings')
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
