import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import type { Shop } from '../support/build-shop.ts'
import { castCustomers } from '../support/cast.ts'
import { fillShop } from '../support/fill-shop.ts'
import { admin, type Ended, run, startServer, temporaryFolder } from '../support/machine.ts'
import { postJson, preparedFolder, readingBody } from '../support/prepared-folder.ts'
import { anotherOrder, workAndHandOver } from '../support/shop-steps.ts'
import { signIn } from '../support/sign-in.ts'

const password = 'salt marsh heron'

/** An order that is on the bench: `fillShop` released the first and handed over the second. */
const openOrder = (shop: Shop) => anotherOrder(fillShop(shop)).number

function expectDone(ended: Ended): string {
  expect(ended).toMatchObject({ code: 0, stderr: '' })
  return ended.stdout.trimEnd()
}

/** Exit 1 refused or 2 wrong usage, with one line on standard error and none on the other. */
function expectRefused(ended: Ended, code: 1 | 2, sentence: string | RegExp): void {
  expect(ended.stderr).toMatch(/^[^\n]+\n$/)
  expect(ended.stderr).toMatch(sentence)
  expect(ended).toMatchObject({ code, stdout: '' })
}

describe('admin', () => {
  test.each([['--help'], ['user', 'add', '-h']])(
    '%s prints every verb and exits 0',
    async (...args) => {
      const text = expectDone(await admin(temporaryFolder(), args))
      for (const verb of [
        'user add',
        'user password',
        'token add',
        'token revoke',
        'backup',
        'restore',
        'verify',
      ]) {
        expect(text).toContain(`\n  ${verb}`)
      }
    },
  )

  test('is reached by npm run -s admin, with nothing else printed', async () => {
    const env = { RINGPROOF_DATA: join(temporaryFolder(), 'data') }
    const npm = (...args: string[]) =>
      run('npm', ['run', '-s', 'admin', '--', ...args], { env }).ended
    expect(expectDone(await npm('--help'))).toMatch(/^Ringproof, commands of the operator\n/)
    expectRefused(await npm('verify'), 1, /^There is no database at .*ringproof\.sqlite\.\n$/)
    expectRefused(await npm('verify', '--speed'), 2, /See: npm run -s admin -- --help\n$/)
  })

  test.each([
    [[], 'Say what to do.'],
    [['frobnicate'], 'There is no command "frobnicate".'],
    [['user'], 'There is no command "user".'],
    [['user', 'remove'], 'There is no command "user remove".'],
    [['toString'], 'There is no command "toString".'],
    [['user', 'add', '--role', 'manager'], '--name is missing.'],
    [['user', 'add', '--name', ' ', '--role', 'manager'], '--name is missing.'],
    [['user', 'add', '--name', 'n'.repeat(61), '--role', 'manager'], '--name takes at most 60'],
    [['user', 'add', '--name', 'mo'], '--role is missing.'],
    [['user', 'add', '--name', 'mo', '--role', 'boss'], 'There is no role "boss".'],
    [['user', 'add', '--name', 'mo', '--role', 'customer'], 'needs --customer NAME'],
    [
      ['user', 'add', '--name', 'm', '--role', 'manager', '--customer', 'X'],
      '--customer goes with',
    ],
    [['user', 'add', 'mo', '--name', 'mo', '--role', 'manager'], '"mo" is one word too many.'],
    [['token', 'add', '--user', 'mo'], '--label is missing.'],
    [['token', 'add', '--label', 'x'], '--user is missing.'],
    [['token', 'add', '--user', 'mo', '--label', 'l'.repeat(121)], '--label takes at most 120'],
    [['token', 'revoke', '--user', 'mo'], '--label is missing.'],
    [['backup'], 'FILE is missing.'],
    [['backup', 'a', 'b'], '"b" is one word too many.'],
    [['restore'], 'FILE is missing.'],
    [['verify', 'all'], '"all" is one word too many.'],
    [['verify', '--name', 'mo'], '--name does not go with this command.'],
    [['verify', '--loudly'], '--loudly'],
    [['user', 'add', '--name'], '--name'],
  ])('%j is wrong usage', async (args, sentence) => {
    const folder = join(temporaryFolder(), 'data')
    const ended = await admin(folder, args, { stdin: password })
    expectRefused(ended, 2, /See: npm run -s admin -- --help\n$/)
    expect(ended.stderr).toContain(sentence)
    expect(existsSync(folder)).toBe(false)
  })
})

describe('user add', () => {
  test('makes the database and the first manager, who then signs in', async () => {
    const folder = join(temporaryFolder(), 'data')
    const args = ['user', 'add', '--name', 'mo', '--role', 'manager', '--display', 'Mo Marsh']
    const printed = expectDone(await admin(folder, args, { stdin: `${password}\n` }))
    expect(printed).toBe('mo can sign in as manager.')
    const server = await startServer(folder, { RINGPROOF_DEMO: '' })
    const { location, cookie } = await signIn(server.address, 'mo', password)
    expect(location).toBe('/bench')
    const account = await fetch(`${server.address}/account`, { headers: { cookie } })
    expect(await account.text()).toContain('Mo Marsh')
    expect((await signIn(server.address, 'mo', `${password} `)).status).toBe(422)
    await server.stop()
    const raw = new Database(join(folder, 'ringproof.sqlite'), { readonly: true })
    const [hash] = raw.prepare('SELECT password_hash FROM user').pluck().all()
    const lines = raw.prepare("SELECT detail FROM audit WHERE act = 'add-user'").pluck().all()
    raw.close()
    expect(hash).toMatch(/^\$argon2id\$v=19\$m=65536,t=3,p=1\$/)
    expect(lines).toHaveLength(1)
    expect(String(lines[0])).not.toContain('argon2')
  })

  test.each(['technician', 'inspector'])('makes a %s', async (role) => {
    const folder = join(temporaryFolder(), 'data')
    expectDone(
      await admin(folder, ['user', 'add', '--name', 'x', '--role', role], { stdin: password }),
    )
  })

  test('with the role customer needs a customer that is in the records', async () => {
    const { folder } = preparedFolder()
    const args = ['user', 'add', '--name', 'cleo', '--role', 'customer', '--customer']
    expectRefused(
      await admin(folder, [...args, 'Nobody Ltd'], { stdin: password }),
      1,
      'There is no customer "Nobody Ltd" in the records.\n',
    )
    expectDone(await admin(folder, [...args, castCustomers.cora], { stdin: password }))
    const server = await startServer(folder)
    expect((await signIn(server.address, 'cleo', password)).location).toBe('/my-seals')
  })

  test('with the role customer makes no database that would have no customer', async () => {
    const folder = join(temporaryFolder(), 'data')
    const args = ['user', 'add', '--name', 'cleo', '--role', 'customer', '--customer', 'X']
    expectRefused(await admin(folder, args, { stdin: password }), 1, /^There is no database at /)
    expect(existsSync(folder)).toBe(false)
  })

  test.each([
    ['', /needs at least 8 characters/],
    ['sevench\n', /needs at least 8 characters/],
    ['x'.repeat(201), /may have at most 200 characters/],
  ])('refuses the password %j', async (stdin, sentence) => {
    const folder = join(temporaryFolder(), 'data')
    const args = ['user', 'add', '--name', 'mo', '--role', 'manager']
    expectRefused(await admin(folder, args, { stdin }), 1, sentence)
    expect(existsSync(folder)).toBe(false)
  })

  test('is not the way to a forgotten password, user password is', async () => {
    const folder = join(temporaryFolder(), 'data')
    const named = ['--name', 'mo']
    const set = ['user', 'password', ...named]
    expectRefused(await admin(folder, set, { stdin: password }), 1, /^There is no database at /)
    expectDone(
      await admin(folder, ['user', 'add', ...named, '--role', 'manager'], { stdin: password }),
    )
    expectRefused(await admin(folder, set, { stdin: 'short' }), 1, /at least 8 characters/)
    expectRefused(
      await admin(folder, ['user', 'password', '--name', 'nobody'], { stdin: password }),
      1,
      'There is no such person.\n',
    )
    expectDone(await admin(folder, set, { stdin: 'another tide' }))
    const server = await startServer(folder)
    expect((await signIn(server.address, 'mo', password)).status).toBe(422)
    expect((await signIn(server.address, 'mo', 'another tide')).location).toBe('/bench')
  })

  test('refuses a name that is taken, in whatever case', async () => {
    const { folder } = preparedFolder()
    const args = ['user', 'add', '--name', 'TESS', '--role', 'manager']
    expectRefused(await admin(folder, args, { stdin: password }), 1, 'That name is taken.\n')
  })
})

describe('a token', () => {
  test('is all that token add prints, acts as its user, and ends when revoked', async () => {
    const { folder, shop } = preparedFolder()
    const of = ['--user', 'tess', '--label', 'bench rig']
    const token = expectDone(await admin(folder, ['token', 'add', ...of]))
    expect(token).toMatch(/^rp_[\w-]{43}$/)
    expectRefused(
      await admin(folder, ['token', 'add', ...of]),
      1,
      /live token with the label bench rig/,
    )
    const server = await startServer(folder)
    const orders = `${server.address}/api/v1/work-orders`
    const get = (bearer: string) =>
      fetch(orders, { headers: { authorization: `Bearer ${bearer}` } })
    expect((await get(token)).status).toBe(200)
    expect((await get(`${token}x`)).status).toBe(401)
    const readings = `${orders}/${shop.workOrder.number}/flatness-readings`
    const recorded = await postJson(readings, readingBody(shop), 'k1', token)
    expect(recorded.status).toBe(201)
    expect(await recorded.json()).toMatchObject({ recordedByName: shop.cast.tess.displayName })
    const printed = expectDone(await admin(folder, ['token', 'revoke', ...of]))
    expect(printed).toBe('The token "bench rig" of tess is ended.')
    expect((await get(token)).status).toBe(401)
    expectRefused(await admin(folder, ['token', 'revoke', ...of]), 1, 'There is no such token.\n')
    // The store keeps the hash alone, and the trail neither.
    const bytes = readFileSync(join(folder, 'ringproof.sqlite'), 'latin1')
    expect(bytes.includes(token)).toBe(false)
  })

  test('of nobody is refused', async () => {
    const { folder } = preparedFolder()
    for (const verb of ['add', 'revoke']) {
      const args = ['token', verb, '--user', 'nobody', '--label', 'x']
      expectRefused(await admin(folder, args), 1, 'There is no such person.\n')
    }
  })

  test('of an inspector can’t sign a release, with the password or without', async () => {
    const { folder, shop } = preparedFolder((made) => workAndHandOver(made))
    await admin(folder, ['user', 'add', '--name', 'ivo', '--role', 'inspector'], {
      stdin: password,
    })
    const token = expectDone(await admin(folder, ['token', 'add', '--user', 'ivo', '--label', 'x']))
    const server = await startServer(folder)
    const decision = `${server.address}/work-orders/${shop.workOrder.number}/decision`
    const send = (type: string, body: string) =>
      fetch(decision, {
        method: 'POST',
        redirect: 'manual',
        headers: {
          authorization: `Bearer ${token}`,
          'content-type': type,
          origin: server.address,
          'sec-fetch-site': 'same-origin',
        },
        body,
      })
    const form = new URLSearchParams({ outcome: 'release', password, formKey: 'k' }).toString()
    const asForm = await send('application/x-www-form-urlencoded', form)
    expect(asForm.status).toBe(303)
    expect(asForm.headers.get('location')).toMatch(/^\/sign-in/)
    expect((await send('application/json', '{"outcome":"release"}')).status).toBe(303)
    const api = `${server.address}/api/v1/work-orders/${shop.workOrder.number}/decision`
    expect((await postJson(api, { outcome: 'release' }, 'k', token)).status).toBe(404)
    await server.stop()
    const raw = new Database(join(folder, 'ringproof.sqlite'), { readonly: true })
    expect(raw.prepare('SELECT count(*) FROM decision').pluck().get()).toBe(0)
    raw.close()
  })
})

describe('backup and restore', () => {
  test('copy a database that is written to, and bring it into an empty folder', async () => {
    let order = ''
    const { folder, shop } = preparedFolder((made) => {
      order = openOrder(made)
    })
    const server = await startServer(folder)
    const url = `${server.address}/api/v1/work-orders/${order}/flatness-readings`
    let isWriting = true
    const acknowledged: number[] = []
    const writer = (async () => {
      for (let n = 0; isWriting; n++) {
        const answer = await postJson(url, readingBody(shop), `b${n}`)
        expect(answer.status).toBe(201)
        acknowledged.push(((await answer.json()) as { id: number }).id)
      }
    })()
    await expect.poll(() => acknowledged.length).toBeGreaterThan(5)
    const beforeCount = acknowledged.length
    const file = join(temporaryFolder(), 'ringproof.backup')
    expect(expectDone(await admin(folder, ['backup', file]))).toBe(`The backup stands at ${file}.`)
    isWriting = false
    await writer
    expect(acknowledged.length).toBeGreaterThan(beforeCount)
    expectRefused(await admin(folder, ['backup', file]), 1, /exists already; a backup overwrites/)

    const other = join(temporaryFolder(), 'other')
    expect(expectDone(await admin(other, ['restore', file]))).toBe(`The backup stands in ${other}.`)
    expect(readdirSync(other)).toEqual(['ringproof.sqlite'])
    expectDone(await admin(other, ['verify']))
    const raw = new Database(join(other, 'ringproof.sqlite'), { readonly: true })
    const kept = raw.prepare('SELECT id FROM flatness_reading ORDER BY id').pluck().all()
    raw.close()
    // Everything acknowledged before the command began is in it; what came during it may be.
    expect(kept).toEqual(expect.arrayContaining(acknowledged.slice(0, beforeCount)))
    const copy = await startServer(other)
    const number = 'C-2026-0001-K7QX3M'
    const pdf = await fetch(`${copy.address}/verify/${number}`)
    expect(await pdf.text()).toContain(number)
    await copy.stop()
  })

  test('a restore refuses a folder that holds anything, and leaves it alone', async () => {
    const { folder } = preparedFolder()
    const file = join(temporaryFolder(), 'b')
    expectDone(await admin(folder, ['backup', file]))
    expectRefused(await admin(folder, ['restore', file]), 1, /is not empty; nothing in it is/)
    const other = temporaryFolder()
    writeFileSync(join(other, 'note.txt'), 'mine')
    expectRefused(await admin(other, ['restore', file]), 1, /is not empty/)
    expect(readdirSync(other)).toEqual(['note.txt'])
  })

  test('a restore of what is no backup leaves the folder empty', async () => {
    const other = join(temporaryFolder(), 'data')
    expectRefused(await admin(other, ['restore', join(other, 'nothing')]), 1, /no database at/)
    const file = join(temporaryFolder(), 'b')
    writeFileSync(file, 'not a database, but long enough to look at'.repeat(100))
    expectRefused(await admin(other, ['restore', file]), 1, /file is not a database/)
    expect(readdirSync(other)).toEqual([])
  })

  test('a backup needs a database and a place', async () => {
    const folder = join(temporaryFolder(), 'data')
    const file = join(folder, 'b')
    expectRefused(await admin(folder, ['backup', file]), 1, /^There is no database at /)
    const { folder: prepared } = preparedFolder()
    expectRefused(await admin(prepared, ['backup', join(folder, 'no', 'b')]), 1, /unable to open/)
  })
})

describe('verify', () => {
  test('says that an honest database is sound, also while the server runs and after kill -9', async () => {
    let order = ''
    const { folder, shop } = preparedFolder((made) => {
      order = openOrder(made)
    })
    const sound =
      'The database is sound: records, audit trail, stored files and certificates agree.'
    expect(expectDone(await admin(folder, ['verify']))).toBe(sound)
    const server = await startServer(folder)
    const url = `${server.address}/api/v1/work-orders/${order}/flatness-readings`
    expect((await postJson(url, readingBody(shop))).status).toBe(201)
    expect(expectDone(await admin(folder, ['verify']))).toBe(sound)
    await server.stop('SIGKILL')
    expect(readdirSync(folder)).toContain('ringproof.sqlite-wal')
    expect(expectDone(await admin(folder, ['verify']))).toBe(sound)
  })

  test.each([
    [
      'an edited reading',
      'UPDATE flatness_reading SET flatness_um = 0.1 WHERE id = 1',
      /flatness_reading 1 was changed/,
    ],
    ['a deleted audit line', 'DELETE FROM audit WHERE id = 7', /audit line 7 is missing/],
    [
      'a changed byte of a PDF',
      "UPDATE stored_file SET bytes = cast(substr(bytes, 1, 9) || x'21' || substr(bytes, 11) AS BLOB)",
      /stored file [0-9a-f]{64} was changed/,
    ],
    [
      'an edited certificate',
      "UPDATE certificate SET record = json_set(record, '$.number', 'X')",
      /certificate C-2026-0001-K7QX3M revision 0 does not agree/,
    ],
  ])('finds %s', async (_, statement, fault) => {
    const { folder, storeFile } = preparedFolder((made) => fillShop(made))
    const raw = new Database(storeFile)
    const names = raw.prepare("SELECT name FROM sqlite_master WHERE type = 'trigger'").pluck().all()
    for (const name of names) raw.exec(`DROP TRIGGER ${name}`)
    const { changes } = raw.prepare(statement).run()
    raw.close()
    expect(changes).toBeGreaterThan(0)
    const ended = await admin(folder, ['verify'])
    expect(ended.code).toBe(1)
    expect(ended.stderr).toMatch(/^The database .*ringproof\.sqlite is not sound, [^\n]+\n$/)
    expect(ended.stdout).toMatch(fault)
  })

  test('names the fault itself on standard error', async () => {
    const { folder, storeFile } = preparedFolder((made) => fillShop(made))
    const raw = new Database(storeFile)
    raw.exec('DROP TRIGGER static_test_no_update; UPDATE static_test SET note = 1 WHERE id = 1')
    raw.close()
    const { stderr } = await admin(folder, ['verify'])
    expect(stderr).toMatch(/is not sound, 1 fault: static_test 1 was changed .*: note\n$/)
  })

  test.each([
    ['cut short', (bytes: Buffer) => bytes.subarray(0, Math.floor(bytes.length / 2))],
    ['cut short by one page', (bytes: Buffer) => bytes.subarray(0, bytes.length - 4096)],
    ['emptied', () => Buffer.alloc(0)],
    ['overwritten in the middle', (bytes: Buffer) => bytes.fill(0x5a, 40_960, 49_152)],
    ['that is no database', () => Buffer.from('x'.repeat(9000))],
  ])('finds a file %s', async (_, damage) => {
    const { folder, storeFile } = preparedFolder((made) => fillShop(made))
    writeFileSync(storeFile, damage(readFileSync(storeFile)))
    const ended = await admin(folder, ['verify'])
    expect(ended.code).toBe(1)
    expect(ended.stderr).toMatch(/^The database .*ringproof\.sqlite is not sound, [^\n]+\n$/)
    expect(ended.stdout).not.toBe('')
  })
})

test('demo loads the invented workshop into an empty folder and no other', async () => {
  const folder = join(temporaryFolder(), 'data')
  mkdirSync(folder)
  expect(expectDone(await admin(folder, ['demo']))).toBe(
    `The invented workshop stands in ${folder}.`,
  )
  expect(expectDone(await admin(folder, ['verify']))).toMatch(/^The database is sound/)
  expectRefused(await admin(folder, ['demo']), 1, /is not empty/)
})
