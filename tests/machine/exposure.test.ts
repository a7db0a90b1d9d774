import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { demoAccounts } from '../../fixtures/demo/accounts.ts'
import {
  type Environment,
  freePort,
  runServer,
  startServer,
  temporaryFolder,
  whenServing,
} from '../support/machine.ts'
import { signIn } from '../support/sign-in.ts'

const everywhere = { RINGPROOF_HOST: '0.0.0.0' } as const

/** The printed address is no address to call: it stands for every one of the machine. */
const callable = (address: string) => address.replace('0.0.0.0', '127.0.0.1')

async function refusalOf(env: Environment): Promise<string> {
  const { code, stdout, stderr } = await runServer({ ...everywhere, ...env }).ended
  expect({ code, stdout }).toEqual({ code: 1, stdout: '' })
  expect(stderr).toMatch(/^[^\n]+\n$/)
  return stderr
}

/** A data folder in which the invented workshop was started once, on loopback. */
async function demoFolder(): Promise<string> {
  const folder = join(temporaryFolder(), 'data')
  const server = await startServer(folder, { RINGPROOF_DEMO: 'on' })
  expect((await server.stop()).code).toBe(0)
  return folder
}

describe('the invented workshop, whose passwords are public,', () => {
  test('is refused beyond loopback where it is asked for, and nothing is left behind', async () => {
    const folder = join(temporaryFolder(), 'data')
    const sentence = await refusalOf({ RINGPROOF_DATA: folder, RINGPROOF_DEMO: 'on' })
    expect(sentence).toMatch(/RINGPROOF_HOST is 0\.0\.0\.0 .* RINGPROOF_EXPOSE_DEMO=yes\.\n$/)
    expect(existsSync(join(folder, 'ringproof.sqlite'))).toBe(false)
  })

  test.each([
    ['as it is by default', ''],
    ['off', 'off'],
    ['on', 'on'],
  ])(
    'is refused beyond loopback where the folder holds it and the setting is %s',
    async (_, demo) => {
      const folder = await demoFolder()
      const sentence = await refusalOf({ RINGPROOF_DATA: folder, RINGPROOF_DEMO: demo })
      expect(sentence).toMatch(
        /RINGPROOF_HOST is 0\.0\.0\.0 and the data folder holds the invented/,
      )
      const no = { RINGPROOF_DATA: folder, RINGPROOF_DEMO: demo, RINGPROOF_EXPOSE_DEMO: 'no' }
      expect(await refusalOf(no)).toBe(sentence)
    },
  )

  test.each(['::', '127.0.0.2'])('is refused at %s as well', async (host) => {
    const env = { RINGPROOF_DATA: join(temporaryFolder(), 'data'), RINGPROOF_DEMO: 'on' }
    expect(await refusalOf({ ...env, RINGPROOF_HOST: host })).toContain(
      `RINGPROOF_HOST is ${host} `,
    )
  })

  test('is served where it was said twice, and the sign-in page shows no password', async () => {
    const folder = await demoFolder()
    const env = { ...everywhere, RINGPROOF_DATA: folder, RINGPROOF_EXPOSE_DEMO: 'yes' }
    const server = await whenServing(runServer(env))
    const address = callable(server.address)
    const page = await (await fetch(`${address}/sign-in`)).text()
    expect(page).toContain('Invented data')
    for (const { name, password } of demoAccounts) {
      expect(page).not.toContain(password)
      expect(page).not.toContain(`>${name}<`)
    }
    // The accounts themselves are there: only their showing ends.
    const { name, password } = demoAccounts[0]
    expect((await signIn(address, name, password)).location).toBe('/bench')
  })
})

test('a new folder beyond loopback starts empty and says what links need', async () => {
  const folder = join(temporaryFolder(), 'data')
  const server = await whenServing(runServer({ ...everywhere, RINGPROOF_DATA: folder }))
  expect(server.stdout().split('\n')[1]).toContain('Set RINGPROOF_ORIGIN')
  const page = await (await fetch(`${callable(server.address)}/sign-in`)).text()
  expect(page).toContain('Nobody can sign in yet')
  expect(page).not.toContain('Invented data')
})

test('a public address is printed, and the session cookie is bound to it', async () => {
  const folder = await demoFolder()
  const port = await freePort()
  const env = {
    ...everywhere,
    RINGPROOF_DATA: folder,
    RINGPROOF_EXPOSE_DEMO: 'yes',
    RINGPROOF_ORIGIN: 'https://seals.example',
    RINGPROOF_PORT: String(port),
  }
  const running = runServer(env)
  const local = `http://127.0.0.1:${port}`
  await expect.poll(() => running.stdout(), { timeout: 30_000 }).toContain('ready at')
  expect(running.stdout()).toContain('Ringproof is ready at https://seals.example\n')
  const { name, password } = demoAccounts[0]
  const { setCookie } = await signIn(local, name, password, 'https://seals.example')
  expect(setCookie).toMatch(/^__Host-ringproof=/)
  expect(setCookie).toMatch(/; Secure/)
})
