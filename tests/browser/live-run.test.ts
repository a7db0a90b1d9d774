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

/** As a rig would, with the session of the page. */
const send = (page: Page, path: string, body: unknown) =>
  page.evaluate(
    async ([to, sent]) => {
      const headers = { 'content-type': 'application/json' }
      const answer = await fetch(`/api/v1${to}`, { method: 'POST', headers, body: sent as string })
      return (await answer.json()) as { id: number }
    },
    [path, JSON.stringify(body)],
  )
const until = (page: Page, text: string) =>
  page.waitForFunction((wanted) => document.body.textContent?.includes(wanted), text)
const readings = (from: number, count: number) =>
  Array.from({ length: count }, (_, i) => ({
    timeS: 60 * (from + i),
    massG: 20 + 0.1 * (from + i),
    torqueNm: 0.4 + 0.01 * ((from + i) % 3),
  }))

test('a run is shown as it happens, through a lost connection', async () => {
  const page = await (await browser.newContext({ viewport: sizes.tablet })).newPage()
  await signIn(page, server.origin, demoAccounts.find((one) => one.name === 'tamsin')!)
  const faults = watch(page)
  const number = server.ask(
    `SELECT number FROM work_order WHERE stage = 'lapping' AND decontamination <> 'not-stated'
     ORDER BY id DESC`,
  )
  const { id } = await send(page, `/work-orders/${number}/dynamic-runs`, { liquid: 'Water' })
  await page.goto(`${server.origin}/work-orders/${number}/dynamic-runs/${id}`)
  await until(page, 'No readings have come yet.')
  await until(page, 'Shown as it happens.')
  await send(page, `/dynamic-runs/${id}/samples`, { samples: readings(0, 12) })
  await until(page, '6.00 g/h')
  expect(await page.locator('#trace-torqueNm, [id^=trace-torqueNm]').count()).toBeGreaterThan(0)
  await expectAccessible(page)

  await page.context().setOffline(true)
  await page.waitForTimeout(300)
  await page.context().setOffline(false)
  await send(page, `/dynamic-runs/${id}/samples`, { samples: readings(12, 10) })
  await page.waitForFunction(() => /Collected mass, g\s*22\b/.test(document.body.textContent ?? ''))
  expect(
    faults.filter((one) => !/ERR_INTERNET_DISCONNECTED|ERR_NETWORK|^load: /.test(one)),
  ).toEqual([])
})
