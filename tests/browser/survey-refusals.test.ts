import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { expectAccessible, launchBrowser } from '../support/browser.ts'
import { type DemoServer, startDemo } from '../support/demo-server.ts'
import {
  beginSurvey,
  signInAs,
  technicianPage,
  typeReading,
  untilAsked,
} from '../support/survey-pages.ts'

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

const posts = '**/readings'
const isOf = (page: Page) => page.url().split('/').at(-1)?.replace(/\?.*/, '')
/** What the server has, in the order it came. */
const recorded = (page: Page, what = 'typed') =>
  server.ask(
    `SELECT coalesce(group_concat(${what}, '; '), '') FROM
     (SELECT * FROM dial_survey_reading WHERE dial_survey_id = ${isOf(page)} ORDER BY id)`,
  )
const told = async (page: Page) =>
  (await page.locator('[data-waiting=own]').textContent())?.replaceAll(/\s+/g, ' ') ?? ''
const untilTold = (page: Page, text: string) =>
  page.locator('[data-waiting=own]').getByText(text).waitFor()
const untilRecorded = (page: Page, wanted: string) =>
  expect.poll(() => recorded(page), { timeout: 15_000 }).toBe(wanted)
/** Number that the picture of the turn shows large, where the indicator stands. */
const drawn = (page: Page) =>
  page.locator('[data-survey-stage] svg text.fill-paper').first().textContent()

async function started(): Promise<Page> {
  const { page } = await technicianPage(browser, server)
  await beginSurvey(page, server)
  return page
}

describe('a server that is there and does not record', () => {
  test.each([
    [503, 'text/plain', 'no upstream', 'it answered 503'],
    [502, 'text/html', '<main>Bad gateway</main>', 'it answered 502'],
    [
      500,
      'text/html',
      '<main><p data-refusal>Internal error, 7f.</p></main>',
      'Internal error, 7f.',
    ],
    [200, 'text/html', '<main>Welcome to this network</main>', 'it answered 200'],
  ])('with %i leaves every reading waiting, and says so', async (status, type, body, why) => {
    const page = await started()
    await page.route(posts, (route) => route.fulfill({ status, contentType: type, body }))
    for (const [index, value] of ['0', '0.007', '0.024'].entries()) {
      await untilAsked(page, index + 1)
      await typeReading(page, value)
      await untilTold(page, why)
    }
    await untilAsked(page, 4)
    const text = await told(page)
    expect(text).toContain('tried again every half minute: 3 of the readings')
    expect(text).toContain('0.007 mm Position 2, 45°')
    // The picture goes with the words.
    expect(await drawn(page)).toBe('4')
    expect(recorded(page)).toBe('')
    await expectAccessible(page)

    // They outlive the page too, and nobody is asked for them again.
    await page.reload()
    await untilAsked(page, 4)
    await untilTold(page, why)
    await page.unroute(posts)
    await page.getByRole('button', { name: 'Send again now' }).click()
    await untilRecorded(page, '0; 0.007; 0.024')
    await untilAsked(page, 4)
    expect(await page.locator('[data-waiting=own]').isHidden()).toBe(true)
  })

  test('has what it can’t record discarded by hand, and the rest goes on', async () => {
    const page = await started()
    await page.route(posts, (route) => route.fulfill({ status: 503, body: '' }))
    await typeReading(page, '0')
    await untilTold(page, 'it answered 503')
    await typeReading(page, '0.7')
    const discard = page.getByRole('button', { name: 'Discard 0.7, Position 2, 45°' })
    await discard.click()
    await discard.waitFor({ state: 'detached' })
    await untilAsked(page, 2)
    await page.unroute(posts)
    await page.getByRole('button', { name: 'Send again now' }).click()
    await untilRecorded(page, '0')
    await untilAsked(page, 2)
  })
})

test('a survey that ended meanwhile: its readings are shown until they are discarded', async () => {
  const page = await started()
  // The other page shares the readings, and would send them: no page of the tablet has a network.
  const tablet = page.context()
  await tablet.route(posts, (route) => route.abort())
  await typeReading(page, '0.012')
  await untilTold(page, 'when the network is back: 1')
  await typeReading(page, '0.019')
  const other = await tablet.newPage()
  await other.goto(page.url())
  await other.locator('summary').getByText('Give it up').click()
  await other.fill('textarea[name=reason]', 'bracket loose')
  await other.getByRole('button', { name: 'Give it up' }).click()
  await other.waitForURL(/work-orders\/[^/]+$/)
  await other.close()

  await tablet.unroute(posts)
  await untilTold(page, 'This survey has ended.')
  expect(await told(page)).toContain('0.012 mm Position 1, 0°')
  await page.reload()
  // The page of an ended survey asks for nothing, and still has them.
  await untilTold(page, 'This survey has ended.')
  expect(await page.locator('[data-spot-title]').count()).toBe(0)
  const text = await told(page)
  expect(text).toContain('0.012 mm Position 1, 0°')
  expect(text).toContain('0.019 mm Position 2, 45°')
  await expectAccessible(page)
  await page.getByRole('button', { name: 'Discard 0.012, Position 1, 0°' }).click()
  await page
    .getByRole('button', { name: 'Discard 0.012, Position 1, 0°' })
    .waitFor({ state: 'detached' })
  await untilTold(page, 'This survey has ended.')
  await page.getByRole('button', { name: 'Discard 0.019, Position 2, 45°' }).click()
  await page.locator('[data-waiting=own]').waitFor({ state: 'hidden' })
  expect(await page.evaluate(() => localStorage.length)).toBe(0)
})

describe('a reading that must be corrected', () => {
  async function refusedInTheMiddle(): Promise<Page> {
    const page = await started()
    await page.route(posts, (route) => route.abort())
    for (const [index, value] of ['0', 'much', '0.024'].entries()) {
      await untilAsked(page, index + 1)
      await typeReading(page, value)
    }
    await untilAsked(page, 4)
    await page.unroute(posts)
    await untilTold(page, 'correct it in the field, or discard it')
    return page
  }

  test('stops the rest, stays in its field, and takes its turn when corrected', async () => {
    const page = await refusedInTheMiddle()
    await untilAsked(page, 2)
    expect(await page.inputValue('input[name=value]')).toBe('much')
    expect(await page.locator('.field-error').first().textContent()).toContain('plain number')
    expect(await told(page)).toContain('much mm Position 2, 45°')
    // Sent as it is, it would only be refused again.
    expect(await page.locator('[data-waiting-again]').isHidden()).toBe(true)
    expect(recorded(page)).toBe('0')
    // Longer than the page waits between two tries.
    await page.waitForTimeout(6000)
    expect(await page.inputValue('input[name=value]')).toBe('much')
    expect(recorded(page)).toBe('0')
    // The field is selected: what is typed next takes the place of what was wrong.
    await typeReading(page, '0,007')
    await untilRecorded(page, '0; 0,007; 0.024')
    expect(recorded(page, 'position_index')).toBe('0; 1; 2')
    await untilAsked(page, 4)
    expect(await page.locator('[data-waiting=own]').isHidden()).toBe(true)
  })

  test('or is discarded, and its position asked for again', async () => {
    const page = await refusedInTheMiddle()
    await page.getByRole('button', { name: 'Discard much, Position 2, 45°' }).click()
    await untilRecorded(page, '0; 0.024')
    await untilAsked(page, 2)
    expect(await page.inputValue('input[name=value]')).toBe('')
  })
})

test('while every position waits, none is asked for, and the last comes through', async () => {
  const page = await started()
  await page.route(posts, (route) => route.abort())
  for (let number = 1; number <= 9; number++) {
    await untilAsked(page, number)
    await typeReading(page, `0.0${number}`)
  }
  await page.getByText('Every position is typed.').waitFor()
  expect(await page.locator('input[name=value]').isDisabled()).toBe(true)
  await page.unroute(posts)
  await page.getByText('Every position is read.').waitFor()
  expect(recorded(page)).toBe(
    [1, 2, 3, 4, 5, 6, 7, 8, 9].map((number) => `0.0${number}`).join('; '),
  )
})

test('what is recorded while the next ones wait is not asked for again', async () => {
  const page = await started()
  let release = () => {}
  const held = new Promise<void>((resolve) => {
    release = resolve
  })
  await page.route(posts, async (route) => {
    if (!route.request().postData()?.includes('positionIndex=0')) return route.abort()
    await held
    return route.continue()
  })
  await typeReading(page, '0.01')
  await untilAsked(page, 2)
  await typeReading(page, '0.02')
  await untilAsked(page, 3)
  release()
  await untilRecorded(page, '0.01')
  await untilTold(page, 'when the network is back: 1')
  await typeReading(page, '0.03')
  await untilAsked(page, 4)
  expect(await drawn(page)).toBe('4')
  await page.unroute(posts)
  await untilRecorded(page, '0.01; 0.02; 0.03')
})

test('two pages of one survey drop only what was recorded', async () => {
  const page = await started()
  let release = () => {}
  const held = new Promise<void>((resolve) => {
    release = resolve
  })
  await page.route(posts, async (route) => {
    await held
    await route.continue()
  })
  await typeReading(page, '0.01')
  await untilAsked(page, 2)
  // The other page finds it waiting and sends it; then its own network is lost.
  const other = await page.context().newPage()
  await other.goto(page.url())
  await untilRecorded(page, '0.01')
  await untilAsked(other, 2)
  await other.route(posts, (route) => route.abort())
  await typeReading(other, '0.02')
  await untilTold(other, 'when the network is back: 1')
  // Now the first page hears that its reading is recorded.
  await page.bringToFront()
  const heard = page.waitForResponse((one) => one.url() === page.url())
  release()
  await heard
  await untilRecorded(page, '0.01; 0.02')
})

describe('readings of somebody else', () => {
  test('wait until that person signs in, and go under no other name', async () => {
    const page = await started()
    const url = page.url()
    await page.route(posts, (route) => route.abort())
    await typeReading(page, '0.01')
    await untilTold(page, 'when the network is back: 1')
    await typeReading(page, '0.02')
    const tamsin = await page.locator('[data-survey-waiting]').getAttribute('data-reader-name')
    await page.unroute(posts)

    // A page of hers still stands open while he signs in beside it.
    const beside = await page.context().newPage()
    await page.route(posts, (route) => route.abort())
    await signInAs(beside, server, 'bjarne')
    await page.unroute(posts)
    await untilTold(page, 'Somebody else has signed in here')
    expect(recorded(page)).toBe('')
    await page.close()

    await beside.goto(url)
    const others = beside.locator('[data-waiting=others]')
    await others.getByText(`${tamsin} typed 2 of the readings here`).waitFor()
    await expectAccessible(beside)
    await untilAsked(beside, 1)
    await typeReading(beside, '0.05')
    await untilAsked(beside, 2)
    // Longer than the page waits between two tries.
    await beside.waitForTimeout(6000)
    expect(recorded(beside)).toBe('0.05')
    expect(await others.isVisible()).toBe(true)

    await signInAs(beside, server, 'tamsin')
    await beside.goto(url)
    await untilRecorded(beside, '0.05; 0.01; 0.02')
    const names = recorded(beside, 'recorded_by_name').split('; ')
    expect(names.slice(1)).toEqual([tamsin, tamsin])
    expect(names[0]).not.toBe(tamsin)
  })

  test('from before names were kept are shown, never sent, and discarded by hand', async () => {
    const page = await started()
    await page.evaluate(() => {
      const body = 'formKey=k-1&planeIndex=0&turnIndex=0&positionIndex=0&indicator=first&value=0.31'
      const action = `${location.pathname}/readings`
      localStorage.setItem(`survey ${location.pathname}`, JSON.stringify([{ action, body }]))
    })
    await page.reload()
    await page.locator('[data-waiting=nameless]').getByText('not recorded: 0.31.').waitFor()
    await page.waitForTimeout(6000)
    expect(recorded(page)).toBe('')
    await expectAccessible(page)
    await page.getByRole('button', { name: 'Discard these' }).click()
    await page.locator('[data-waiting=nameless]').waitFor({ state: 'hidden' })
    expect(await page.evaluate(() => localStorage.length)).toBe(0)
  })
})
