import Database from 'better-sqlite3'
import { expect, test } from 'vitest'
import { seededUniform } from '../science/seeded-random.ts'
import { admin, type Server, sleep, startServer } from '../support/machine.ts'
import { postJson, preparedFolder, readingBody, testBody } from '../support/prepared-folder.ts'

const killCount = 50
const writerCount = 2

type Sent = { readonly key: string; readonly kind: 'flatness-readings' | 'static-tests' }

test(`kill -9 during saves, ${killCount} times, loses no acknowledged record and leaves no half one`, async () => {
  const { folder, storeFile, shop } = preparedFolder()
  const random = seededUniform(20_261_125)
  const acknowledged: Sent[] = []
  let unanswered: Sent[] = []
  let sentCount = 0
  const seen = { unanswered: 0, keptThough: 0 }

  const send = (server: Server, { key, kind }: Sent) => {
    const body = kind === 'static-tests' ? testBody(shop) : readingBody(shop)
    const url = `${server.address}/api/v1/work-orders/${shop.workOrder.number}/${kind}`
    return postJson(url, { ...body, note: key }, key)
  }
  /** Goes on saving until the server is gone. */
  const write = async (server: Server) => {
    for (;;) {
      sentCount += 1
      const kind = sentCount % 3 === 0 ? 'static-tests' : 'flatness-readings'
      const sent: Sent = { key: `k${sentCount}`, kind }
      try {
        const answer = await send(server, sent)
        const body = (await answer.json()) as { note: string }
        expect({ status: answer.status, note: body.note }).toEqual({ status: 201, note: sent.key })
        acknowledged.push(sent)
      } catch (error) {
        if (!isBroken(error)) throw error
        unanswered.push(sent)
        return
      }
    }
  }

  for (let round = 0; round <= killCount; round++) {
    const server = await startServer(folder)
    expectWhole(storeFile, acknowledged)
    // Whoever got no answer sends the same again with the same key: it records exactly once.
    for (const sent of unanswered) {
      const answer = await send(server, sent)
      expect(answer.status).toBe(201)
      await answer.arrayBuffer()
      if (answer.headers.get('idempotency-replayed') === 'true') seen.keptThough += 1
      acknowledged.push(sent)
    }
    seen.unanswered += unanswered.length
    unanswered = []
    const keys = expectWhole(storeFile, acknowledged)
    expect(keys).toEqual(acknowledged.map(({ key }) => key).sort())
    if (round === killCount) {
      expect((await server.stop()).code).toBe(0)
      break
    }
    const writers = Array.from({ length: writerCount }, () => write(server))
    await sleep(5 + 55 * random())
    server.process.kill('SIGKILL')
    await Promise.all([...writers, server.ended])
    expect((await server.ended).signal).toBe('SIGKILL')
  }

  // Something must have been recorded between start and kill, else the test tried nothing.
  expect(acknowledged.length).toBeGreaterThan(seen.unanswered)
  expect(await admin(folder, ['verify'])).toMatchObject({ code: 0, stderr: '' })
  process.stdout.write(
    `${killCount} kills: ${acknowledged.length} records, ${seen.unanswered} without an answer, ` +
      `of which ${seen.keptThough} had been kept\n`,
  )
}, 300_000)

/** What fetch says when the other side is gone; anything else is a finding. */
function isBroken(error: unknown): boolean {
  return error instanceof TypeError
}

/**
 * Every acknowledged record is there once, and every record that is there is whole.
 * @returns the keys of all records
 */
function expectWhole(storeFile: string, acknowledged: readonly Sent[]): readonly string[] {
  const raw = new Database(storeFile, { readonly: true })
  try {
    const keys = raw
      .prepare('SELECT note FROM flatness_reading UNION ALL SELECT note FROM static_test')
      .pluck()
      .all() as string[]
    expect(new Set(keys).size).toBe(keys.length)
    const kept = new Set(keys)
    expect(acknowledged.filter(({ key }) => !kept.has(key))).toEqual([])
    const count = (sql: string) => raw.prepare(sql).pluck().get() as number
    const half = `SELECT count(*) FROM flatness_reading r WHERE
      (SELECT count(*) FROM flatness_direction d WHERE d.flatness_reading_id = r.id) <> 2`
    expect(count(half)).toBe(0)
    const acts = { 'add-flatness-reading': 'flatness_reading', 'add-static-test': 'static_test' }
    for (const [act, table] of Object.entries(acts)) {
      const lines = raw
        .prepare("SELECT json_extract(detail, '$.note') FROM audit WHERE act = ? ORDER BY id")
        .pluck()
        .all(act)
      expect(lines).toEqual(raw.prepare(`SELECT note FROM ${table} ORDER BY id`).pluck().all())
    }
    const answers = raw.prepare("SELECT substr(key, 5) FROM kept_answer WHERE key LIKE 'api %'")
    expect(answers.pluck().all().sort()).toEqual([...keys].sort())
    return [...keys].sort()
  } finally {
    raw.close()
  }
}
