import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { launchBrowser, type sizes } from '../support/browser.ts'
import { type DemoServer, startDemo } from '../support/demo-server.ts'
import { flatnessOfLast, marksOf, openWideFace, settled, technicianAt } from './face-photo-steps.ts'

type Mark = { readonly x: number; readonly y: number; readonly order: number }

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

async function marking(
  size: keyof typeof sizes,
  more: BrowserContextOptions = {},
): Promise<{ page: Page; faults: string[]; id: number }> {
  const { page, faults } = await technicianAt({ browser, server }, size, more)
  const { id } = await openWideFace(page, server)
  await page.locator('input[name=kind][value=marked]').check({ force: true })
  return { page, faults, id }
}

/** Where the program saw bands in this photograph: what somebody would tap along. */
async function toTap(id: number, count: number): Promise<Mark[]> {
  return (await marksOf(server, id, count)).split('\n').map((line) => {
    const [x = 0, y = 0, order = 0] = line.split(' ').map(Number)
    return { x, y, order }
  })
}

const order = (page: Page) => page.locator('#mark-order')
const setCount = async (page: Page) => Number(await page.locator('[data-mark-count]').textContent())

/** Steps the order of the next mark by its buttons. */
async function stepTo(page: Page, wanted: number): Promise<void> {
  for (let n = 0; n < 60; n++) {
    const now = Number(await order(page).inputValue())
    if (now === wanted) return
    if (now > wanted) await page.getByRole('button', { name: 'half an order less' }).click()
    else if (wanted - now >= 1) await page.getByRole('button', { name: 'Next band' }).click()
    else await page.getByRole('button', { name: 'half an order more' }).click()
  }
}

/** Brings a place of the photograph to the middle of its window and says where on the screen. */
async function onScreen(page: Page, mark: Mark): Promise<{ x: number; y: number }> {
  return page.evaluate(({ x, y }) => {
    const stage = document.querySelector<HTMLElement>('[data-stage]')!
    const scroller = document.querySelector<HTMLElement>('[data-scroller]')!
    scroller.scrollIntoView({ block: 'start' })
    const scale = stage.clientWidth / Number(stage.dataset.width)
    scroller.scrollTo(x * scale - scroller.clientWidth / 2, y * scale - scroller.clientHeight / 2)
    const box = stage.getBoundingClientRect()
    return { x: box.left + x * scale, y: box.top + y * scale }
  }, mark)
}

/** The same picture, read by the program. */
function byProgram(id: number): { bands: number; expandedBands: number } {
  const column = (name: string) =>
    Number(
      server.ask(`SELECT ${name} FROM flatness_reading JOIN whole_face ON flatness_reading_id = id
        WHERE kind = 'photo' AND photo_id = ${id} ORDER BY id LIMIT 1`),
    )
  const expandedBands = (2 * column('standard_uncertainty_um')) / column('band_height_um')
  return { bands: column('bands'), expandedBands }
}

async function recordAndCompare(page: Page, id: number, count: number): Promise<void> {
  await settled(page)
  expect(await page.locator('#face-photo-answer').textContent()).toMatch(/± \d\.\d+ µm/)
  await page.getByRole('button', { name: 'Record the reading' }).last().click()
  await page.waitForURL(/recorded=flatness/)
  const { bands, method, details } = flatnessOfLast(server)
  expect(method).toMatch(/^flatness\/marked/)
  expect(details.source).toMatchObject({ kind: 'marked', photoId: id })
  expect((details.source.points as unknown[]).length).toBe(count)
  // The doubt of marks is 0.35 band at the least, the program's own comes on top.
  const program = byProgram(id)
  expect(Math.abs(bands - program.bands)).toBeLessThan(0.35 + program.expandedBands)
}

test('bands are marked with a mouse, and the figure is the one that the program gives', async () => {
  const { page, faults, id } = await marking('tablet')
  const marks = await toTap(id, 30)
  for (const [index, mark] of marks.entries()) {
    await stepTo(page, mark.order)
    const at = await onScreen(page, mark)
    await page.mouse.click(at.x, at.y)
    if (index !== 11) continue
    // Half-way it says how many are missing.
    await settled(page)
    await page.waitForFunction(() =>
      document.querySelector('#face-photo-answer')?.textContent?.includes('at least 8 more'),
    )
  }
  expect(await setCount(page)).toBe(marks.length)

  // A mark is chosen in the list, moved by its own button, given another order, and all is undone.
  const before = await page.inputValue('[name=points]')
  await page.locator('.mark-chip').nth(4).click()
  const chosen = page.locator('.photo-mark[aria-pressed=true]')
  expect(await chosen.count()).toBe(1)
  await chosen.scrollIntoViewIfNeeded()
  const box = (await chosen.boundingBox())!
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
  await page.mouse.down()
  await page.mouse.move(box.x + box.width / 2 + 30, box.y + box.height / 2, { steps: 3 })
  await page.mouse.up()
  expect(await page.inputValue('[name=points]')).not.toBe(before)
  await page.getByRole('button', { name: 'half an order more' }).click()
  await page.getByRole('button', { name: 'Remove chosen' }).click()
  expect(await setCount(page)).toBe(marks.length - 1)
  for (let n = 0; n < 3; n++) await page.getByRole('button', { name: 'Undo' }).click()
  expect(await page.inputValue('[name=points]')).toBe(before)
  await recordAndCompare(page, id, marks.length)
  expect(faults).toEqual([])
  await page.context().close()
})

test('bands are marked with a finger on a phone, in a picture made larger', async () => {
  const { page, faults, id } = await marking('phone', { hasTouch: true })
  const marks = await toTap(id, 24)
  for (let n = 0; n < 3; n++) await page.getByRole('button', { name: 'Larger' }).tap()
  for (const mark of marks) {
    await stepTo(page, mark.order)
    const at = await onScreen(page, mark)
    await page.touchscreen.tap(at.x, at.y)
  }
  expect(await setCount(page)).toBe(marks.length)
  const kept = (await page.inputValue('[name=points]')).split('\n').map((line) => line.split(' '))
  for (const [index, [x, y]] of kept.entries()) {
    // A pixel of the screen is less than one of the picture here; taps are whole pixels.
    const { x: toX, y: toY } = marks[index]!
    expect(Math.hypot(Number(x) - toX, Number(y) - toY)).toBeLessThan(2)
  }
  await recordAndCompare(page, id, marks.length)
  expect(faults).toEqual([])
  await page.context().close()
})

test('bands are marked by the keyboard alone', async () => {
  const { page, faults, id } = await marking('desktop')
  // Whole picture in sight: a new mark stands in its middle, from where arrow keys take it.
  const marks = await toTap(id, 21)
  for (const mark of marks) {
    await order(page).focus()
    await page.keyboard.press('Control+a')
    await page.keyboard.type(String(mark.order))
    await page.getByRole('button', { name: 'Mark in the middle' }).focus()
    await page.keyboard.press('Enter')
    const [x = 0, y = 0] = (await page.inputValue('[name=points]'))
      .split('\n')
      .at(-1)!
      .split(' ')
      .map(Number)
    // The new mark has the focus.
    for (const [by, less, more] of [
      [mark.x - x, 'ArrowLeft', 'ArrowRight'],
      [mark.y - y, 'ArrowUp', 'ArrowDown'],
    ] as const) {
      const tens = Math.round(Math.abs(by) / 10)
      for (let n = 0; n < tens; n++) await page.keyboard.press(`Shift+${by < 0 ? less : more}`)
    }
  }
  expect(await setCount(page)).toBe(marks.length)
  await page.keyboard.press('Delete')
  expect(await setCount(page)).toBe(marks.length - 1)
  await page.getByRole('button', { name: 'Undo' }).focus()
  await page.keyboard.press('Enter')
  await recordAndCompare(page, id, marks.length)
  expect(faults).toEqual([])
  await page.context().close()
})
