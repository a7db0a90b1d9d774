import type { Browser, Page } from 'playwright-core'
import { demoAccounts } from '../../fixtures/demo/accounts.ts'
import { signIn, sizes, watch } from './browser.ts'
import type { DemoServer } from './demo-server.ts'

/** Signs in by the page, as one of the people of the demo. */
export async function signInAs(
  page: Page,
  server: DemoServer,
  name: (typeof demoAccounts)[number]['name'],
): Promise<void> {
  await signIn(page, server.origin, demoAccounts.find((one) => one.name === name)!)
}

/** A tablet of its own, with a technician signed in. */
export async function technicianPage(
  browser: Browser,
  server: DemoServer,
  hasScript = true,
): Promise<{ page: Page; faults: string[] }> {
  const context = await browser.newContext({
    viewport: sizes.tablet,
    javaScriptEnabled: hasScript,
  })
  const page = await context.newPage()
  const faults = watch(page)
  await signInAs(page, server, 'tamsin')
  return { page, faults }
}

/** Begins a survey of a sleeve: eight positions and a closing one, in mm. */
export async function beginSurvey(page: Page, server: DemoServer): Promise<void> {
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

/** Waits until the form asks for a position, by its number from 1. */
export async function untilAsked(page: Page, number: number): Promise<void> {
  await page.waitForFunction(
    (start) => document.querySelector('[data-spot-title]')?.textContent?.startsWith(start),
    number === 9 ? 'Closing reading' : `Position ${number},`,
  )
}

/** As an indicator types that is plugged in as a keyboard: digits, then Enter. */
export async function typeReading(page: Page, value: string): Promise<void> {
  await page.keyboard.type(value)
  await page.keyboard.press('Enter')
}
