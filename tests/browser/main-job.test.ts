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

async function person(name: string, size: keyof typeof sizes): Promise<Page> {
  const context = await browser.newContext({ viewport: sizes[size], acceptDownloads: true })
  const page = await context.newPage()
  const account = demoAccounts.find((one) => one.name === name)
  await signIn(page, server.origin, account!)
  return page
}

/** Presses the button of the main content that carries this text, and waits for the next page. */
async function press(page: Page, text: string | RegExp): Promise<void> {
  await Promise.all([
    page.waitForEvent('domcontentloaded'),
    page.locator('main').getByRole('button', { name: text }).first().click(),
  ])
}

/** One face under the lamp: pattern by its picture, counts by touch. */
async function readFace(page: Page, face: RegExp, quarters: readonly [number, number]) {
  await page.getByRole('radio', { name: face }).check()
  await page.locator('input[name=pattern][value=convex]').check()
  for (const [index, count] of quarters.entries()) {
    const more = page.locator('[data-stepper]').nth(index).locator('[data-step="0.25"]')
    for (let n = 0; n < count; n++) await more.click()
  }
}

test('a seal goes from receipt to certificate, by hand, through the pages', async () => {
  const faults: string[] = []
  const tamsin = await person('tamsin', 'tablet')
  faults.push(...watch(tamsin))

  // Receipt: customer, seal, order.
  await tamsin.goto(`${server.origin}/work-orders/new`)
  await tamsin.getByRole('link', { name: /Saltmarsh Sugar Works/ }).click()
  await tamsin.locator('main .job-link').first().click()
  await tamsin.fill('input[name=customerOrder]', 'PO-4711 Größe')
  await tamsin.locator('input[name=decontamination][value=stated-clean]').check()
  await tamsin.fill('input[name=lastFluid]', 'Raw juice')
  await press(tamsin, /Receive|Open the work order|Record/)
  const number = /W-\d{4}-\d{4}/.exec(tamsin.url())?.[0] ?? ''
  expect(number).toMatch(/^W-/)

  // Handing over at once is refused, with what is missing in words.
  const orderUrl = `${server.origin}/work-orders/${number}`
  await tamsin.goto(orderUrl)
  const missing = await tamsin.locator('main').textContent()
  expect(missing).toMatch(/[Rr]otating face/)
  expect(missing).toMatch(/[Ss]tatic (air )?test/)

  // Two faces; the figures come while the count changes.
  await tamsin.goto(`${orderUrl}/flatness/new`)
  await readFace(tamsin, /Rotating face/, [5, 4])
  await tamsin.waitForFunction(() =>
    document.querySelector('.reading-answer')?.textContent?.includes('0.367'),
  )
  const answer = await tamsin.locator('.reading-answer').textContent()
  expect(answer).toContain('14.5') // 1.25 helium bands: 0.367 µm, 14.5 µin
  expect(answer).toMatch(/Pass/)
  await press(tamsin, /other face/)
  await readFace(tamsin, /Stationary seat/, [3, 2])
  // The keyboard steps too: one quarter up, one down.
  const typed = tamsin.locator('input[name="readings[0].bands"]')
  await typed.focus()
  await tamsin.keyboard.press('ArrowUp')
  expect(await typed.inputValue()).toBe('1.00')
  await tamsin.keyboard.press('ArrowDown')
  expect(await typed.inputValue()).toBe('0.75')
  await press(tamsin, /^Record$/)

  // The static test, with a slip first: the sentence stands beside the field, the rest is kept.
  await tamsin.goto(`${orderUrl}/static-tests/new`)
  await tamsin.fill('input[name=startPressure]', '1,72')
  await tamsin.fill('input[name=endPressure]', 'about 1.7')
  await tamsin.locator('[name=pressureUnit]').first().waitFor()
  await choose(tamsin, 'pressureUnit', 'bar')
  await tamsin.fill('input[name=startTemperatureC]', '20.5')
  await tamsin.fill('input[name=endTemperatureC]', '20.5')
  await tamsin.fill('input[name=volumeL]', '2.5')
  await tamsin.fill('input[name=durationMin]', '5')
  await choose(tamsin, 'gaugeInstrumentId', 'G-02')
  await press(tamsin, /^Record$/)
  expect(await tamsin.locator('[aria-invalid=true]').getAttribute('name')).toBe('endPressure')
  expect(await tamsin.inputValue('input[name=endPressure]')).toBe('about 1.7')
  expect(await tamsin.inputValue('input[name=startPressure]')).toBe('1,72')
  await tamsin.fill('input[name=endPressure]', '1,718')
  await press(tamsin, /^Record$/)
  await tamsin.goto(orderUrl)
  await press(tamsin, /Hand over/)
  expect(await tamsin.locator('main').textContent()).toMatch(/Handed over/)

  // The inspector, a wrong password first.
  const ingrid = await person('ingrid', 'desktop')
  await ingrid.goto(`${server.origin}/inspection`)
  await ingrid
    .getByRole('link', { name: new RegExp(number) })
    .first()
    .click()
  await ingrid.locator('input[name=outcome][value=release]').check()
  await ingrid.fill('input[name=password]', 'not my password')
  await press(ingrid, /Sign/)
  expect(await ingrid.locator('[aria-invalid=true]').getAttribute('name')).toBe('password')
  await ingrid.locator('input[name=outcome][value=release]').check()
  await ingrid.fill('input[name=password]', 'high-tide-seal')
  await press(ingrid, /Sign/)
  const certificate = /C-\d{4}-\d{4,}-[2-9A-Z]{6}/.exec(ingrid.url())?.[0] ?? ''
  expect(certificate).toMatch(/^C-/)

  // The customer downloads it, twice, byte for byte; the public page knows it; a stranger does not.
  const cora = await person('cora', 'phone')
  await cora.goto(`${server.origin}/certificates/${certificate}`)
  const pdf = `${server.origin}/certificates/${certificate}/document.pdf`
  const [first, second] = await Promise.all([cora.request.get(pdf), cora.request.get(pdf)])
  const bytes = await first.body()
  expect(bytes.subarray(0, 5).toString()).toBe('%PDF-')
  expect(bytes.equals(await second.body())).toBe(true)
  const dorrit = await person('dorrit', 'phone')
  expect((await dorrit.request.get(pdf)).status()).toBe(404)
  const anyone = await (await browser.newContext({ viewport: sizes.phone })).newPage()
  await anyone.goto(`${server.origin}/verify/${certificate.toLowerCase().replaceAll('-', ' ')}`)
  expect(await anyone.locator('main').textContent()).toContain(certificate)
  expect(faults).toEqual([])
})

async function choose(page: Page, name: string, text: string): Promise<void> {
  const select = page.locator(`select[name=${name}]`)
  if ((await select.count()) > 0) {
    const label = await select.locator('option', { hasText: text }).first().textContent()
    await select.selectOption({ label: label?.trim() ?? text })
  } else {
    await page.locator(`input[name=${name}][value="${text}"]`).check()
  }
}

test('a reading is recorded without any script in the page', async () => {
  const context = await browser.newContext({ javaScriptEnabled: false, viewport: sizes.tablet })
  const page = await context.newPage()
  await signIn(page, server.origin, demoAccounts[0])
  const number = server.ask(
    "SELECT number FROM work_order WHERE stage = 'lapping' ORDER BY id DESC",
  )
  await page.goto(`${server.origin}/work-orders/${number}/flatness/new`)
  await page.getByRole('radio', { name: /Rotating face/ }).check()
  await page.locator('input[name=pattern][value=concave]').check()
  await page.fill('input[name="readings[0].bands"]', '1,5')
  await page.fill('input[name="readings[1].bands"]', '1.25')
  await Promise.all([
    page.waitForURL((url) => url.pathname.endsWith(number)),
    page.getByRole('button', { name: 'Record', exact: true }).click(),
  ])
  // 1.5 helium bands are 0.441 µm; rounded as its uncertainty says.
  expect(await page.locator('main').textContent()).toContain('0.44 ±')
  await context.close()
})

test('a double click on Record records once', async () => {
  const page = await person('bjarne', 'tablet')
  const number = server.ask("SELECT number FROM work_order WHERE stage = 'lapping' ORDER BY id")
  const count = () =>
    Number(
      server.ask(`SELECT count(*) FROM flatness_reading WHERE work_order_id = (
        SELECT id FROM work_order WHERE number = '${number}')`),
    )
  const before = count()
  await page.goto(`${server.origin}/work-orders/${number}/flatness/new`)
  await readFace(page, /Rotating face/, [4, 4])
  await page.getByRole('button', { name: 'Record', exact: true }).dblclick()
  await page.waitForURL((url) => url.pathname.endsWith(number))
  expect(count()).toBe(before + 1)
})
