import type { Locator, Page } from 'playwright-core'
import type { sizes } from '../support/browser.ts'
import type { DemoServer } from '../support/demo-server.ts'

/** A picture of a page: who looks at it, on what, and what is done before it is taken. */
export type Scene = {
  readonly file: string
  readonly who: string
  readonly size: keyof typeof sizes
  readonly view: 'light' | 'lamp'
  readonly show: (page: Page, server: DemoServer) => Promise<void>
}

/** The pages of README, each as its user has it before them. */
export const scenes: readonly Scene[] = [
  {
    file: 'technician-bench.png',
    who: 'tamsin',
    size: 'tablet',
    view: 'light',
    show: (page, { origin }) => open(page, `${origin}/bench`),
  },
  {
    file: 'technician-reading.png',
    who: 'tamsin',
    size: 'tablet',
    view: 'light',
    show: async (page, server) => {
      await readFace(page, server)
      await scrollTo(page, page.locator('[data-stepper]').first(), 'end')
    },
  },
  {
    file: 'lamp-view.png',
    who: 'tamsin',
    size: 'tablet',
    view: 'lamp',
    show: async (page, server) => {
      await readFace(page, server)
      const count = page.locator('.question', { has: page.locator('#bands-0') })
      await scrollTo(page, count, 'start')
    },
  },
  {
    file: 'inspector-evidence.png',
    who: 'ingrid',
    size: 'desktop',
    view: 'light',
    show: async (page, { origin, ask }) => {
      const number = ask("SELECT number FROM work_order WHERE stage = 'handed-over'")
      await open(page, `${origin}/work-orders/${number}/inspection`)
    },
  },
  {
    file: 'customer-seal.png',
    who: 'cora',
    size: 'phone',
    view: 'light',
    show: async (page, { origin, ask }) => {
      const seal = ask(`SELECT seal_id FROM work_order
        WHERE customer_id = 1 AND stage = 'dispatched' ORDER BY id DESC`)
      await open(page, `${origin}/seals/${seal}`)
    },
  },
]

async function open(page: Page, url: string): Promise<void> {
  const answer = await page.goto(url)
  if (answer?.status() !== 200) throw new Error(`${url} answered ${answer?.status()}`)
}

/** A face as left, convex, 1.25 bands one way and 1.0 the other, with the answer on the page. */
async function readFace(page: Page, { origin, ask }: DemoServer): Promise<void> {
  const number = ask("SELECT number FROM work_order WHERE stage = 'lapping' ORDER BY id DESC")
  await open(page, `${origin}/work-orders/${number}/flatness/new`)
  await page.getByRole('radio', { name: /Rotating face/ }).check()
  await page.locator('input[name=condition][value=as-left]').check()
  await page.locator('input[name=pattern][value=convex]').check()
  for (const [index, quarters] of [5, 4].entries()) {
    const more = page.locator('[data-stepper]').nth(index).locator('[data-step="0.25"]')
    for (let pressed = 0; pressed < quarters; pressed++) await more.click()
  }
  // Of 1.25 helium bands: the answer has come when it says so.
  await page.locator('.reading-answer', { hasText: '0.367' }).waitFor()
}

/** Scrolls until a part of the page stands at the upper or the lower edge, with a little air. */
async function scrollTo(page: Page, part: Locator, edge: 'start' | 'end'): Promise<void> {
  const [box, window] = [await part.boundingBox(), page.viewportSize()]
  if (box === null || window === null) throw new Error('scrollTo requires a part of the page')
  const byPx = edge === 'start' ? box.y - 16 : box.y + box.height + 16 - window.height
  await page.evaluate((top) => globalThis.scrollBy({ top, behavior: 'instant' }), byPx)
}
