import { existsSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { type Browser, chromium, type Page } from 'playwright-core'
import { expect } from 'vitest'

/**
 * A real Chromium: the one that CHROMIUM names, the system's, else the one that comes with an npm
 * package. There is always one of them, so the browser tests never skip.
 */
export async function launchBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: await browserPath(),
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--force-color-profile=srgb',
    ],
  })
}

async function browserPath(): Promise<string> {
  const places = [process.env.CHROMIUM, '/usr/bin/chromium', '/usr/bin/chromium-browser']
  for (const path of places) if (path && existsSync(path)) return path
  // The packed browser brings its own NSS libraries and unpacks them only where it believes to
  // run in this runtime.
  process.env.AWS_EXECUTION_ENV ??= 'AWS_Lambda_nodejs22.x'
  const { default: packed } = await import('@sparticuz/chromium')
  return packed.executablePath()
}

export const sizes = {
  tablet: { width: 1024, height: 768 },
  phone: { width: 390, height: 844 },
  desktop: { width: 1440, height: 900 },
} as const

/** What went wrong in the page since it was opened: script errors, CSP violations, failed loads. */
export function watch(page: Page): string[] {
  const faults: string[] = []
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()} at ${page.url()}`)
  })
  page.on('pageerror', (error) => faults.push(`script: ${error.message} at ${page.url()}`))
  page.on('requestfailed', (request) => {
    // The browser cancels what it no longer needs when one leaves a page.
    if (request.failure()?.errorText !== 'net::ERR_ABORTED') faults.push(`load: ${request.url()}`)
  })
  return faults
}

/** Signs in by the page, as people do. */
export async function signIn(
  page: Page,
  origin: string,
  who: { readonly name: string; readonly password: string },
): Promise<void> {
  await page.context().clearCookies({ name: 'ringproof' })
  await page.goto(`${origin}/sign-in`)
  await page.fill('input[name=name]', who.name)
  await page.fill('input[name=password]', who.password)
  await Promise.all([
    page.waitForURL((url) => !url.pathname.startsWith('/sign-in')),
    page.click('form[action="/sign-in"] button[type=submit]'),
  ])
}

const axeSource = readFileSync(
  createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
  'utf8',
)
const axeTags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

type Axe = {
  run: (on: Document, how: object) => Promise<{ violations: unknown[]; passes: unknown[] }>
}
type AxeFinding = { id: string; help: string; nodes: { html: string; failureSummary?: string }[] }

/** WCAG 2.2 AA by axe; `evaluate` runs beside the page's policy, so the page needs no exception. */
export async function expectAccessible(page: Page): Promise<void> {
  await page.evaluate(axeSource)
  const findings = await page.evaluate(async (tags) => {
    const axe = (globalThis as unknown as { axe: Axe }).axe
    const { violations, passes } = await axe.run(document, { runOnly: tags })
    return { violations, passedCount: passes.length }
  }, axeTags)
  expect(findings.passedCount, 'axe looked at nothing').toBeGreaterThan(5)
  const told = (findings.violations as AxeFinding[]).map(
    (one) =>
      `${one.id}: ${one.help} — ${one.nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`,
  )
  expect(told, page.url()).toEqual([])
}

/** Nothing sticks out: a page never scrolls sideways. */
export async function expectNoSidewaysScroll(page: Page): Promise<void> {
  const overPx = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  )
  expect(overPx, `${page.url()} is wider than its window`).toBeLessThanOrEqual(0)
}

/** Targets of fingers: 48 px high or more, links inside running text apart (WCAG 2.5.8). */
export async function expectLargeTargets(page: Page): Promise<void> {
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('button, input:not([type=hidden]), select, .button')]
      .map((element) => {
        const label = element.closest('label')
        const box = (label ?? element).getBoundingClientRect()
        const own = element.getBoundingClientRect()
        return { html: element.outerHTML.slice(0, 120), px: Math.max(box.height, own.height) }
      })
      .filter(({ px }) => px > 0 && px < 47.5),
  )
  expect(small, page.url()).toEqual([])
}
