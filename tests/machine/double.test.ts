import { readdirSync } from 'node:fs'
import Database from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { admin, runServer, startServer, temporaryFolder, whenServing } from '../support/machine.ts'
import { postJson, preparedFolder, readingBody, testBody } from '../support/prepared-folder.ts'

function count(storeFile: string, table: string): unknown {
  const raw = new Database(storeFile, { readonly: true })
  try {
    return raw.prepare(`SELECT count(*) FROM ${table}`).pluck().get()
  } finally {
    raw.close()
  }
}

describe('the same request sent twenty times at once', () => {
  test.each([
    ['flatness-readings', 'flatness_reading', readingBody],
    ['static-tests', 'static_test', testBody],
  ] as const)('to %s records once and answers the same each time', async (path, table, body) => {
    const { folder, storeFile, shop } = preparedFolder()
    const server = await startServer(folder)
    const url = `${server.address}/api/v1/work-orders/${shop.workOrder.number}/${path}`
    const answers = await Promise.all(
      Array.from({ length: 20 }, () => postJson(url, body(shop), 'same')),
    )
    const texts = await Promise.all(answers.map((one) => one.text()))
    expect(answers.map((one) => one.status)).toEqual(Array(20).fill(201))
    expect(new Set(texts).size).toBe(1)
    const repeats = answers.filter((one) => one.headers.get('idempotency-replayed') === 'true')
    expect(repeats).toHaveLength(19)
    expect(count(storeFile, table)).toBe(1)
    const other = await postJson(url, { ...body(shop), note: 'another' }, 'same')
    expect(other.status).toBe(409)
    expect(count(storeFile, table)).toBe(1)
  })
})

describe('two servers on one data folder', () => {
  test('record side by side, and a request resent to the other one records once', async () => {
    const { folder, storeFile, shop } = preparedFolder()
    const servers = await Promise.all([startServer(folder), startServer(folder)])
    const path = `/api/v1/work-orders/${shop.workOrder.number}/flatness-readings`
    const keys = Array.from({ length: 40 }, (_, index) => `k${index}`)
    // Each key goes to both at the same time: whichever comes second answers what the first did.
    const texts = await Promise.all(
      keys.map(async (key) => {
        const pair = await Promise.all(
          servers.map(({ address }) =>
            postJson(`${address}${path}`, { ...readingBody(shop), note: key }, key),
          ),
        )
        expect(pair.map((one) => one.status)).toEqual([201, 201])
        return Promise.all(pair.map((one) => one.text()))
      }),
    )
    for (const [one, other] of texts) expect(one).toBe(other)
    expect(count(storeFile, 'flatness_reading')).toBe(40)
    for (const server of servers) expect((await server.stop()).code).toBe(0)
    expect(await admin(folder, ['verify'])).toMatchObject({ code: 0, stderr: '' })
  })

  test('started at once in an empty folder load the invented workshop once', async () => {
    const folder = temporaryFolder()
    const env = { RINGPROOF_DATA: folder, RINGPROOF_DEMO: 'on' }
    const starts = [runServer(env), runServer(env), runServer(env)]
    const servers = await Promise.all(starts.map((one) => whenServing(one)))
    for (const server of servers) {
      expect(server.stdout()).toContain('The invented workshop is loaded.')
      expect((await server.stop()).code).toBe(0)
    }
    expect(readdirSync(folder)).toEqual(['ringproof.sqlite'])
    const { code, stdout } = await admin(folder, ['verify'])
    expect({ code, stdout }).toMatchObject({ code: 0 })
  })
})
