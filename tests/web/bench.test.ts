import { beforeEach, describe, expect, it } from 'vitest'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { refuse } from '../../src/store/refuse.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf } from '../support/cast.ts'
import { anotherOrder, doTheWork, freshReading, workAndHandOver } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
})

const section = (html: string, id: string) =>
  html.match(new RegExp(`<section aria-labelledby="${id}">.*?</section>`, 's'))?.[0] ?? ''
const read = async (path: string, as = 'tess') => (await app.get(path, as)).text()

describe('the bench', () => {
  it('shows what waits, each with what is to be done next', async () => {
    const html = section(await read('/bench'), 'waiting')
    expect(html).toContain('W-2026-0001')
    expect(html).toContain('Read a face')
    expect(html).toContain('Invented Sugar Works · P-101 · S-1')
    expect(html).toContain('Due 2026-12-15')
  })

  it('shows the due ones soonest first and says which are overdue', async () => {
    anotherOrder(shop, { dueOn: '2026-11-27' })
    anotherOrder(shop, { dueOn: '2026-11-20' })
    anotherOrder(shop, { dueOn: '2026-11-25' })
    const html = section(await read('/bench'), 'due')
    expect(html.match(/W-2026-\d{4}(?=<\/span>)/g)).toEqual([
      'W-2026-0003',
      'W-2026-0004',
      'W-2026-0002',
    ])
    expect(html).toContain('Overdue since 2026-11-20')
    expect(html).toContain('Due today')
  })

  it('shows what was refused with the reason of the inspector, escaped', async () => {
    const handOver = workAndHandOver(shop)
    const { ian } = shop.cast
    const reason = 'bands <b>not</b> straight'
    refuse(shop.store, { handOverId: handOver.id, reason, by: ian }, actorOf(ian))
    const html = section(await read('/bench'), 'failed')
    expect(html).toContain('Refused by Ian Ives: bands &lt;b&gt;not&lt;/b&gt; straight')
  })

  it('shows what fails its limit, to be reworked', async () => {
    doTheWork(shop)
    const bad = freshReading(shop, 'rotating-face', { flatnessUm: 9 })
    addFlatnessReading(shop.store, bad, actorOf(shop.cast.tess))
    const html = section(await read('/bench'), 'failed')
    expect(html).toContain('Fails its limit')
    expect(html).toContain('Rework, then measure again')
  })

  it('shows what waits for the inspector apart', async () => {
    workAndHandOver(shop)
    const html = await read('/bench')
    expect(section(html, 'inspection')).toContain('W-2026-0001')
    expect(section(html, 'waiting')).not.toContain('W-2026-0001')
  })
})

describe('opening an order by its number', () => {
  const find = async (number: string) => {
    const answer = await app.get(`/work-orders/find?${new URLSearchParams({ number })}`, 'tess')
    return { status: answer.status, to: answer.headers.get('location') }
  }

  it.each(['W-2026-0001', 'w-2026-1', ' 1 ', '0001'])('opens it by "%s"', async (typed) => {
    expect(await find(typed)).toEqual({ status: 303, to: '/work-orders/W-2026-0001' })
  })

  it('opens it by the serial, where one order alone answers to it', async () => {
    expect((await find('S-1')).to).toBe('/work-orders/W-2026-0001')
    anotherOrder(shop)
    expect((await find('S-1')).to).toBe('/work-orders?q=S-1')
  })

  it('leads to the list, which says that nothing answers', async () => {
    const { to } = await find('W-2026-9999')
    expect(to).toBe('/work-orders?q=W-2026-9999')
    expect(await read(to ?? '')).toContain('No work order matches this')
  })

  it('asks again where nothing was typed', async () => {
    const answer = await app.get('/work-orders/find?number=++', 'tess')
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain('Scan or type the number on the tag')
  })
})
