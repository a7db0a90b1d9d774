import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { demoAccounts } from '../../fixtures/demo/accounts.ts'
import { type Route, routes } from '../../src/web/route-table.ts'
import {
  expectAccessible,
  expectLargeTargets,
  expectNoSidewaysScroll,
  launchBrowser,
  signIn,
  sizes,
  watch,
} from '../support/browser.ts'
import { type DemoPage, demoPages } from '../support/demo-pages.ts'
import { type DemoServer, startDemo } from '../support/demo-server.ts'

let server: DemoServer
let browser: Browser
let pages: Readonly<Record<string, readonly DemoPage[]>>
let lookedAtCount = 0

beforeAll(async () => {
  server = await startDemo()
  browser = await launchBrowser()
  pages = demoPages(server)
})
afterAll(async () => {
  await browser?.close()
  await server?.stop()
})

async function open(
  who: string,
): Promise<{ context: BrowserContext; page: Page; faults: string[] }> {
  const context = await browser.newContext()
  const page = await context.newPage()
  const faults = watch(page)
  const account = demoAccounts.find((one) => one.name === who)
  if (account !== undefined) await signIn(page, server.origin, account)
  return { context, page, faults }
}

async function view(context: BrowserContext, value: string): Promise<void> {
  await context.addCookies([{ name: 'ringproof-view', value, url: server.origin }])
}

async function go(page: Page, { path, status = 200 }: DemoPage): Promise<void> {
  const response = await page.goto(server.origin + path)
  expect(response?.status(), path).toBe(status)
  lookedAtCount++
}

/** A technician has forty pages and more, each looked at twice by a browser beside other work. */
const patience = 300_000

/** A refused address is a failed load to the browser's console, and is meant to be one. */
function expectNoFaults(faults: readonly string[]): void {
  expect(faults.filter((one) => !/status of 40[349]/.test(one))).toEqual([])
}

describe.each(['tamsin', 'ingrid', 'marit', 'cora', ''])('the pages of "%s"', (who) => {
  test.each(['light', 'lamp'])(
    'are accessible in the %s view, on tablet and phone',
    async (name) => {
      const { context, page, faults } = await open(who)
      await view(context, name)
      for (const one of pages[who]!) {
        for (const size of ['tablet', 'phone'] as const) {
          await page.setViewportSize(sizes[size])
          await go(page, one)
          await expectAccessible(page)
          await expectNoSidewaysScroll(page)
          await expectLargeTargets(page)
        }
      }
      expectNoFaults(faults)
      await context.close()
    },
    patience,
  )

  test('are accessible in the dark view and fit a desktop', async () => {
    const { context, page, faults } = await open(who)
    await view(context, 'dark')
    await page.setViewportSize(sizes.desktop)
    for (const one of pages[who]!) {
      await go(page, one)
      await expectAccessible(page)
      await expectNoSidewaysScroll(page)
    }
    expectNoFaults(faults)
    await context.close()
  })
})

test('every page that the route table serves is among them', () => {
  // These answer with a redirect, a document or a stream, and have no page of their own.
  const pageless = [
    'home',
    'findWorkOrder',
    'downloadCertificate',
    'showInstrumentFile',
    'showFacePicture',
    'showFindingPicture',
    'liveDynamicRun',
  ]
  const paths = Object.values(pages).flatMap((list) => list.map((one) => one.path.split('?')[0]!))
  const missing = Object.entries(routes as Readonly<Record<string, Route>>)
    .filter(
      ([name, one]) => one.method === 'get' && one.surface === 'page' && !pageless.includes(name),
    )
    .filter(([, one]) => !paths.some((path) => patternOf(one.path).test(path)))
  expect(missing.map(([name]) => name)).toEqual([])
})

function patternOf(path: string): RegExp {
  return new RegExp(`^${path.replaceAll(/:\w+/g, '[^/]+')}$`)
}

test('all of this looked at pages', () => {
  expect(lookedAtCount).toBeGreaterThan(150)
})

test('the lamp view has no colour at all: every pixel is a grey', async () => {
  const { context, page } = await open('tamsin')
  await view(context, 'lamp')
  await page.setViewportSize(sizes.tablet)
  const eye = await context.newPage()
  for (const one of pages.tamsin!.slice(0, 12)) {
    await go(page, one)
    const png = (await page.screenshot()).toString('base64')
    const coloured = await eye.evaluate(async (data) => {
      const bitmap = await createImageBitmap(
        await (await fetch(`data:image/png;base64,${data}`)).blob(),
      )
      const canvas = new OffscreenCanvas(bitmap.width, bitmap.height)
      const pen = canvas.getContext('2d')
      pen?.drawImage(bitmap, 0, 0)
      const pixels = pen?.getImageData(0, 0, bitmap.width, bitmap.height).data ?? []
      let count = 0
      for (let i = 0; i < pixels.length; i += 4) {
        const [r = 0, g = 0, b = 0] = [pixels[i], pixels[i + 1], pixels[i + 2]]
        if (Math.max(r, g, b) - Math.min(r, g, b) > 2) count++
      }
      return { count, lookedAt: pixels.length / 4 }
    }, png)
    expect(coloured.lookedAt).toBe(1024 * 768)
    expect(coloured.count, one.path).toBe(0)
  }
  await context.close()
})
