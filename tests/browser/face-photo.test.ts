import { fileURLToPath } from 'node:url'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import {
  expectAccessible,
  expectLargeTargets,
  expectNoSidewaysScroll,
  launchBrowser,
  type sizes,
} from '../support/browser.ts'
import { type DemoServer, startDemo } from '../support/demo-server.ts'
import {
  edgeOf,
  flatnessOfLast,
  marksOf,
  openPhoto,
  settled,
  technicianAt,
} from './face-photo-steps.ts'

const photograph = fileURLToPath(
  new URL('../../fixtures/files/bands/suite/core-000.jpg', import.meta.url),
)

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

const technician = (size: keyof typeof sizes, more: BrowserContextOptions = {}) =>
  technicianAt({ browser, server }, size, more)

const kind = (page: Page, value: string) =>
  page.locator(`input[name=kind][value=${value}]`).check({ force: true })

async function record(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Record the reading' }).last().click()
  await page.waitForURL(/recorded=flatness/)
}

describe('a photograph', () => {
  test('is taken, read, asked which way the bands move, and recorded', async () => {
    const { page, faults } = await technician('tablet')
    const { number } = await openPhoto(page, server)
    await page.goto(`${server.origin}/work-orders/${number}/face-photos/new`)
    await page.locator('input[name=faceId]').first().check()
    // Who chooses after having taken one means the chosen one.
    await page.setInputFiles('#file-camera', photograph)
    await page.setInputFiles('#file', photograph)
    expect(await page.inputValue('#file-camera')).toBe('')
    await page.getByRole('button', { name: 'Keep and read it' }).click()
    await page.waitForURL(/face-photos\/\d+$/)
    await settled(page)
    expect(await page.locator('#face-photo-answer').textContent()).toMatch(/0\.\d\d ± 0\.\d\d µm/)
    expect(await page.locator('[data-seen] path').count()).toBeGreaterThan(10)
    expect(await page.locator('[data-seen] text', { hasText: /^[AB]$/ }).count()).toBe(2)

    await page.getByRole('radio', { name: 'As arrow B points' }).check()
    await settled(page)
    expect(await page.getByRole('radio', { name: 'As arrow B points' }).isChecked()).toBe(true)
    await record(page)
    const { details } = flatnessOfLast(server)
    expect(details.isSignKnown).toBe(true)
    expect(details.source).toMatchObject({ kind: 'photo', wedge: expect.anything() })
    expect(faults).toEqual([])
    await page.context().close()
  })

  test('is read and recorded without any script', async () => {
    const { page } = await technician('desktop', { javaScriptEnabled: false })
    const { number, id } = await openPhoto(page, server)
    await page.getByRole('button', { name: 'Read it now' }).click()
    await page.waitForURL(/preview$/)
    expect(await page.locator('#face-photo-answer').textContent()).toMatch(/± 0\.\d\d µm/)
    // What was seen lies over the picture, and the rings do.
    expect(await page.locator('.photo-over .drawing path').count()).toBeGreaterThan(10)
    expect(await page.locator('[data-edges] ellipse').count()).toBe(4)
    await record(page)
    expect(page.url()).toContain(number)
    expect(flatnessOfLast(server).details.source).toMatchObject({ kind: 'photo', photoId: id })
    await page.context().close()
  })

  test('says so where no answer came, and keeps what was set', async () => {
    const { page } = await technician('tablet')
    await openPhoto(page, server)
    await settled(page)
    const lost = page.locator('[data-lost]')
    expect(await lost.isVisible()).toBe(false)
    await page.route('**/preview', (route) => route.abort())
    await page.locator('details.fold summary').first().click()
    await page.fill('[name="outer.cx"]', '500')
    await lost.waitFor()
    expect(await page.inputValue('[name="outer.cx"]')).toBe('500')
    await page.unroute('**/preview')
    await page.getByRole('button', { name: 'Read it now' }).click()
    await lost.waitFor({ state: 'hidden' })
    await settled(page)
    await page.context().close()
  })

  test('asks the server once for many changes in a row', async () => {
    const { page } = await technician('tablet')
    await openPhoto(page, server)
    await settled(page)
    let askedCount = 0
    page.on('request', (one) => {
      if (one.url().endsWith('/preview')) askedCount++
    })
    const middle = page.getByRole('button', { name: 'Outer edge, middle' })
    await middle.focus()
    for (let n = 0; n < 12; n++) await page.keyboard.press('ArrowRight')
    await settled(page)
    expect(askedCount).toBe(1)
    // To leave a field that nobody changed asks nothing.
    await page.locator('details.fold summary').first().click()
    await page.locator('[name="outer.cx"]').focus()
    await page.keyboard.press('Tab')
    await page.waitForTimeout(600)
    expect(askedCount).toBe(1)
    await page.context().close()
  })
})

describe('a ring', () => {
  test('is laid with a mouse by its ends and by its middle', async () => {
    const { page, faults } = await technician('tablet')
    await openPhoto(page, server)
    await settled(page)
    const before = await edgeOf(page, 'outer')
    const end = page.getByRole('button', { name: 'Outer edge, first end' })
    await end.scrollIntoViewIfNeeded()
    const box = (await end.boundingBox())!
    const scale = await page.evaluate(() => {
      const stage = document.querySelector<HTMLElement>('[data-stage]')
      return stage === null ? 0 : stage.getBoundingClientRect().width / Number(stage.dataset.width)
    })
    const turn = (before.rotationDeg * Math.PI) / 180
    const pulledPx = 40
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
    await page.mouse.down()
    await page.mouse.move(
      box.x + box.width / 2 + pulledPx * Math.cos(turn),
      box.y + box.height / 2 - pulledPx * Math.sin(turn),
      { steps: 4 },
    )
    await page.mouse.up()
    const after = await edgeOf(page, 'outer')
    // The other end stays: half of the pull is half of the axis. Fields keep two decimals.
    expect(after.rx - before.rx).toBeCloseTo(pulledPx / scale / 2, 0)
    expect(after.ry).toBeCloseTo(before.ry, 1)
    expect(Math.hypot(after.cx - before.cx, after.cy - before.cy)).toBeCloseTo(
      after.rx - before.rx,
      0,
    )

    const middle = page.getByRole('button', { name: 'Inner edge, middle' })
    const inner = await edgeOf(page, 'inner')
    await middle.focus()
    await page.keyboard.press('ArrowRight')
    await page.keyboard.press('Shift+ArrowDown')
    const moved = await edgeOf(page, 'inner')
    expect(moved.cx - inner.cx).toBeCloseTo(1, 1)
    expect(moved.cy - inner.cy).toBeCloseTo(10, 1)
    expect(faults).toEqual([])
    await page.context().close()
  })

  test('is laid with a finger, and two fingers make the picture larger', async () => {
    const { page, faults } = await technician('phone', { hasTouch: true })
    await openPhoto(page, server)
    await settled(page)
    const cdp = await page.context().newCDPSession(page)
    const touch = (type: string, ...points: { x: number; y: number }[]) =>
      cdp.send('Input.dispatchTouchEvent', { type: type as 'touchStart', touchPoints: points })
    const before = await edgeOf(page, 'inner')
    const handle = page.getByRole('button', { name: 'Inner edge, middle' })
    await handle.scrollIntoViewIfNeeded()
    const box = (await handle.boundingBox())!
    expect(box.width).toBeGreaterThanOrEqual(44)
    const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
    await touch('touchStart', at)
    for (const d of [6, 14, 24]) await touch('touchMove', { x: at.x + d, y: at.y })
    await touch('touchEnd')
    const after = await edgeOf(page, 'inner')
    expect(after.cx).toBeGreaterThan(before.cx + 24)
    expect(after.cy).toBeCloseTo(before.cy, 0)

    const stage = page.locator('[data-stage]')
    const small = (await stage.boundingBox())!
    const middle = { x: small.x + small.width / 2, y: small.y + small.height * 0.2 }
    const spread = (px: number) => [
      { x: middle.x - px, y: middle.y },
      { x: middle.x + px, y: middle.y },
    ]
    await touch('touchStart', ...spread(30))
    for (const px of [40, 55, 75]) await touch('touchMove', ...spread(px))
    await touch('touchEnd')
    // From 30 to 75 px each side: two and a half times as large.
    expect((await stage.boundingBox())!.width / small.width).toBeCloseTo(2.5, 1)
    expect((await handle.boundingBox())!.width).toBe(box.width)
    await expectNoSidewaysScroll(page)
    await page.getByRole('button', { name: 'Whole picture' }).click()
    expect((await stage.boundingBox())!.width).toBeCloseTo(small.width, 0)
    expect(faults).toEqual([])
    await page.context().close()
  })
})

test('a grid of lines is turned and spaced by its signs, and recorded', async () => {
  const { page, faults } = await technician('tablet')
  await openPhoto(page, server)
  await kind(page, 'line-grid')
  await page.getByRole('button', { name: 'Grid of lines, direction' }).focus()
  for (let n = 0; n < 4; n++) await page.keyboard.press('ArrowUp')
  expect(Number(await page.inputValue('[name=gridDirectionDeg]'))).toBeCloseTo(2, 6)
  const spacing = Number(await page.inputValue('[name=gridSpacingPx]'))
  const space = page.getByRole('button', { name: 'Grid of lines, spacing' })
  await space.scrollIntoViewIfNeeded()
  const box = (await space.boundingBox())!
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
  await page.mouse.down()
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2 - 30, { steps: 3 })
  await page.mouse.up()
  expect(Number(await page.inputValue('[name=gridSpacingPx]'))).toBeGreaterThan(spacing + 5)
  expect(await page.locator('[data-lines] line').count()).toBeGreaterThan(10)
  await page.fill('[name=oneWayBands]', '0.5')
  await page.fill('[name=otherWayBands]', '0,25')
  await settled(page)
  await record(page)
  const { bands, details } = flatnessOfLast(server)
  expect(details.seen).toBeNull()
  // Half and a quarter of a band, seen at the angle that the edge which was found shows.
  const angle = (Number(details.source.viewingAngleDeg ?? Number.NaN) * Math.PI) / 180
  expect(bands).toBeCloseTo(0.75 / Math.cos(angle), 9)
  expect(faults).toEqual([])
  await page.context().close()
})

describe.each(['tablet', 'phone', 'desktop'] as const)('the workbench on a %s', (size) => {
  test('has no barrier and nothing that sticks out, whatever way is chosen', async () => {
    const { page, faults } = await technician(size)
    const { number, id } = await openPhoto(page, server)
    await settled(page)
    for (const value of ['photo', 'line-grid', 'marked']) {
      await kind(page, value)
      await page.waitForTimeout(500)
      await settled(page)
      await expectLargeTargets(page)
      if (value === 'marked') {
        await page.getByText('Marks in numbers').click()
        await page.fill('[name=points]', await marksOf(server, id, 24))
      }
      await settled(page)
      await expectAccessible(page)
      await expectNoSidewaysScroll(page)
    }
    expect(await page.locator('.photo-mark').count()).toBe(24)
    expect(page.url()).toContain(number)
    expect(faults).toEqual([])
    await page.context().close()
  })
})
