import { existsSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import { type AddressInfo, connect } from 'node:net'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import Database from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { demoAccounts } from '../../fixtures/demo/accounts.ts'
import { addCast } from '../support/cast.ts'
import {
  door,
  run,
  runServer,
  sleep,
  startServer,
  temporaryFolder,
  whenServing,
} from '../support/machine.ts'
import { openDataFolder } from '../support/open-data-folder.ts'
import { signIn } from '../support/sign-in.ts'

test('these tests run under the Node 24 that the project installs', () => {
  expect(process.versions.node.split('.')[0]).toBe('24')
})

describe('a first start', () => {
  test('on loopback loads the invented workshop and prints the address and who may sign in', async () => {
    const folder = join(temporaryFolder(), 'data')
    const server = await startServer(folder, { RINGPROOF_DEMO: '' })
    const [first, ...rest] = server.stdout().trimEnd().split('\n')
    expect(first).toBe(`Ringproof is ready at ${server.address}`)
    expect(server.address).toMatch(/^http:\/\/127\.0\.0\.1:[1-9]\d*$/)
    for (const { name, password, role } of demoAccounts) {
      expect(
        rest.some((line) => line.match(/\S+/g)?.join(' ') === `${role} ${name} ${password}`),
      ).toBe(true)
    }
    const page = await (await fetch(`${server.address}/sign-in`)).text()
    for (const { name, password } of demoAccounts) {
      expect(page).toContain(`<code>${name}</code>`)
      expect(page).toContain(`<code>${password}</code>`)
    }
    expect(page).not.toContain('user add')
    const { name, password } = demoAccounts[0]
    expect((await signIn(server.address, name, password)).location).toBe('/bench')
    expect(readdirSync(folder).filter((file) => file.includes('.part'))).toEqual([])
  })

  test('with RINGPROOF_DEMO=off is empty, and the sign-in page says how the first manager comes', async () => {
    const folder = join(temporaryFolder(), 'data')
    const server = await startServer(folder)
    expect(server.stdout().trimEnd().split('\n')).toHaveLength(1)
    const page = await (await fetch(`${server.address}/sign-in`)).text()
    expect(page).toContain('npm run -s admin -- user add --name NAME --role manager')
    for (const { password } of demoAccounts) expect(page).not.toContain(password)
    await server.stop()
    const raw = new Database(join(folder, 'ringproof.sqlite'), { readonly: true })
    expect(raw.prepare('SELECT count(*) FROM customer').pluck().get()).toBe(0)
    raw.close()
  })

  test('makes a data folder that only its owner can read', async () => {
    const folder = join(temporaryFolder(), 'deep', 'data')
    await startServer(folder)
    expect(statSync(folder).mode & 0o077).toBe(0)
  })

  test('leaves a folder that holds anything without the invented workshop', async () => {
    const folder = temporaryFolder()
    writeFileSync(join(folder, 'note.txt'), 'mine')
    const server = await startServer(folder, { RINGPROOF_DEMO: 'on' })
    expect(server.stdout().trimEnd().split('\n')).toHaveLength(1)
    expect(existsSync(join(folder, 'note.txt'))).toBe(true)
  })
})

test('/healthz answers 200 and {"status":"ok"}', async () => {
  const server = await startServer(temporaryFolder())
  const answer = await fetch(`${server.address}/healthz`)
  expect(answer.status).toBe(200)
  expect(answer.headers.get('content-type')).toBe('application/json')
  expect(await answer.text()).toBe('{"status":"ok"}')
})

test('a second start keeps what was recorded before', async () => {
  const folder = join(temporaryFolder(), 'data')
  const first = await startServer(folder, { RINGPROOF_DEMO: '' })
  const { name, password } = demoAccounts[6]
  const { cookie } = await signIn(first.address, name, password)
  const created = await fetch(`${first.address}/api/v1/customers`, {
    method: 'POST',
    headers: { cookie, 'content-type': 'application/json' },
    body: JSON.stringify({ name: 'Kept Works', address: '1 Kept Road', contact: 'Kim' }),
  })
  expect(created.status).toBe(201)
  await first.stop()
  const second = await startServer(folder, { RINGPROOF_DEMO: '' })
  const list = await fetch(`${second.address}/customers`, { headers: { cookie } })
  expect(await list.text()).toContain('Kept Works')
})

describe('a stop', () => {
  test.each(['SIGTERM', 'SIGINT'] as const)(
    'by %s exits 0 within 5 s and closes the database',
    async (signal) => {
      const folder = temporaryFolder()
      const server = await startServer(folder)
      await (await fetch(`${server.address}/sign-in`)).text()
      const { code, ms, stderr } = await timed(() => server.stop(signal))
      expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
      expect(ms).toBeLessThan(5000) // what operators are promised; usual are some 50 ms
      expect(readdirSync(folder)).toEqual(['ringproof.sqlite'])
    },
  )

  test('does not wait for a connection that a browser keeps open', async () => {
    const server = await startServer(temporaryFolder())
    const socket = connect(Number(new URL(server.address).port), '127.0.0.1')
    let heard = ''
    socket.on('data', (bytes) => (heard += bytes.toString()))
    socket.write('GET /healthz HTTP/1.1\r\nhost: x\r\nconnection: keep-alive\r\n\r\n')
    while (!heard.includes('{"status":"ok"}')) await sleep(5)
    const { code, ms } = await timed(() => server.stop())
    expect(code).toBe(0)
    expect(ms).toBeLessThan(2000) // idle connections are closed at once, not after a time-out
    socket.destroy()
  })

  test('finishes the request in flight, then leaves', async () => {
    const folder = temporaryFolder()
    const store = openDataFolder(folder)
    addCast(store)
    store.close()
    const server = await startServer(folder)
    // A wrong password takes some 60 ms to be found wrong: the answer is still under way.
    const answer = signIn(server.address, 'tess', 'not her password')
    await sleep(20)
    const { code, ms } = await timed(() => server.stop())
    expect((await answer).status).toBe(422)
    expect(code).toBe(0)
    expect(ms).toBeLessThan(2000) // far from the 4 s after which requests are given up
  })

  test('gives up a request that never ends, and a second signal changes nothing', async () => {
    const folder = temporaryFolder()
    const server = await startServer(folder)
    const socket = connect(Number(new URL(server.address).port), '127.0.0.1')
    socket.on('error', () => undefined)
    const head = 'POST /sign-in HTTP/1.1\r\nhost: x\r\nsec-fetch-site: same-origin\r\n'
    const type = 'content-type: application/x-www-form-urlencoded\r\n'
    socket.write(`${head}${type}content-length: 100\r\n\r\nname=`)
    await sleep(100)
    const ended = timed(() => server.stop('SIGTERM'))
    await sleep(100)
    server.process.kill('SIGINT')
    server.process.kill('SIGTERM')
    const { code, ms, stderr } = await ended
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    expect(ms).toBeLessThan(5000) // what operators are promised
    expect(readdirSync(folder)).toEqual(['ringproof.sqlite'])
  })

  test('does not wait for another program that reads the database', async () => {
    const folder = temporaryFolder()
    const server = await startServer(folder)
    const reader = new Database(join(folder, 'ringproof.sqlite'), { readonly: true })
    reader.exec('BEGIN; SELECT count(*) FROM audit')
    const { code, ms } = await timed(() => server.stop())
    reader.close()
    expect(code).toBe(0)
    expect(ms).toBeLessThan(5000) // what operators are promised
  })

  test('of npm start exits 0 as well', async () => {
    const env = { RINGPROOF_DATA: temporaryFolder(), RINGPROOF_DEMO: 'off', RINGPROOF_PORT: '0' }
    const server = await whenServing(run('npm', ['-s', 'start'], { env }))
    const { code, ms } = await timed(() => server.stop())
    expect(code).toBe(0)
    expect(ms).toBeLessThan(5000) // what operators are promised
    await expect(fetch(`${server.address}/healthz`)).rejects.toThrow()
  })
})

describe('a start is refused with one line, exit 1,', () => {
  test.each([
    [
      { RINGPROOF_PORT: 'eighty' },
      /^RINGPROOF_PORT takes a whole number from 0 to 65535, got "eighty"$/,
    ],
    [{ RINGPROOF_PORT: '65536' }, /^RINGPROOF_PORT takes .*, got "65536"$/],
    [{ RINGPROOF_DEMO: 'yes' }, /^RINGPROOF_DEMO takes on or off, got "yes"$/],
    [{ RINGPROOF_EXPOSE_DEMO: 'on' }, /^RINGPROOF_EXPOSE_DEMO takes yes or no, got "on"$/],
    [{ RINGPROOF_ORIGIN: 'seals' }, /^RINGPROOF_ORIGIN takes an address .*, got "seals"$/],
    [{ RINGPROOF_ORIGIN: 'https://seals.example/app' }, /^RINGPROOF_ORIGIN takes scheme and host/],
    [{ RINGPROOF_HOST: '203.0.113.9', RINGPROOF_DEMO: 'off' }, /^Can’t listen on 203\.0\.113\.9/],
  ])('for %o', async (env, sentence) => {
    const folder = join(temporaryFolder(), 'data')
    const { code, stdout, stderr } = await runServer({ RINGPROOF_DATA: folder, ...env }).ended
    expect(stderr).toMatch(/^[^\n]+\n$/)
    expect(stderr.trimEnd()).toMatch(sentence)
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' })
  })

  test('where the port is in use', async () => {
    const taken = createServer()
    await new Promise<void>((resolve) => taken.listen(0, '127.0.0.1', resolve))
    const port = String((taken.address() as AddressInfo).port)
    const env = { RINGPROOF_DATA: temporaryFolder(), RINGPROOF_DEMO: 'off', RINGPROOF_PORT: port }
    const { code, stderr } = await runServer(env).ended
    taken.close()
    expect(code).toBe(1)
    expect(stderr).toBe(
      `Port ${port} of 127.0.0.1 is in use: stop what listens there, or set RINGPROOF_PORT.\n`,
    )
  })

  test('where a newer version wrote the database', async () => {
    const folder = temporaryFolder()
    const store = openDataFolder(folder)
    store.raw.exec("INSERT INTO migration SELECT 99, '0099_x', 'x', 'x'")
    store.close()
    const { code, stderr } = await runServer({ RINGPROOF_DATA: folder }).ended
    expect(code).toBe(1)
    expect(stderr).toMatch(
      /^Can’t open the database .*ringproof\.sqlite: .*start the newer version/,
    )
    expect(stderr).toMatch(/^[^\n]+\n$/)
  })

  test('where the database is no database, and it is left as it is', async () => {
    const folder = temporaryFolder()
    const file = join(folder, 'ringproof.sqlite')
    writeFileSync(file, 'x'.repeat(8192))
    const { code, stderr } = await runServer({ RINGPROOF_DATA: folder }).ended
    expect(code).toBe(1)
    expect(stderr).toBe(`Can’t open the database ${file}: file is not a database\n`)
    expect(statSync(file).size).toBe(8192)
  })

  test('where the data folder is a file', async () => {
    const file = join(temporaryFolder(), 'data')
    writeFileSync(file, '')
    const { code, stderr } = await runServer({ RINGPROOF_DATA: file }).ended
    expect(code).toBe(1)
    expect(stderr).toMatch(/^Can’t use the data folder .*data \(see RINGPROOF_DATA\): [^\n]+\n$/)
  })

  test('under another Node than the one it installs', async () => {
    // The door is asked in a process whose version reads 20, as it would on a bare machine.
    const pretend = `Object.defineProperty(process.versions, 'node', { value: '20.1.0' })
      await import(${JSON.stringify(pathToFileURL(door).href)})`
    const { code, stdout, stderr } = await run(process.execPath, [
      '--input-type=module',
      '-e',
      pretend,
    ]).ended
    expect(stderr).toBe(
      'Ringproof runs on the Node 24 that it installs: start it with "npm start" or ' +
        '"npm run admin" (this is Node 20.1.0).\n',
    )
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' })
  })
})

test('the time from the door to the first answered page is measured', async () => {
  const folder = temporaryFolder()
  const startedAt = performance.now()
  const env = { RINGPROOF_DATA: folder, RINGPROOF_DEMO: 'off', RINGPROOF_PORT: '0' }
  const server = await whenServing(run(process.execPath, [door], { env }))
  const page = await fetch(`${server.address}/sign-in`)
  expect((await page.text()).toLowerCase().startsWith('<!doctype html>')).toBe(true)
  const ms = Math.round(performance.now() - startedAt)
  process.stdout.write(`from "node src/start.js" to the first answered page: ${ms} ms\n`)
})

async function timed<T extends object>(work: () => Promise<T>): Promise<T & { ms: number }> {
  const startedAt = performance.now()
  const done = await work()
  return { ...done, ms: performance.now() - startedAt }
}
