import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { environmentOf, projectFolder, sleep } from './machine.ts'

export type DemoServer = {
  readonly origin: string
  /** The first column of the first row: for finding records to look at. */
  readonly ask: (sql: string) => string
  readonly stop: () => Promise<void>
}

/** The built server with the invented workshop in a folder of its own, for a whole test file. */
export async function startDemo(): Promise<DemoServer> {
  const folder = mkdtempSync(join(tmpdir(), 'ringproof-demo-'))
  const data = join(folder, 'data')
  const env = { RINGPROOF_DATA: data, RINGPROOF_PORT: '0', RINGPROOF_DEMO: 'on' }
  const child = spawn(process.execPath, [join(projectFolder, '.build/run/main.js')], {
    cwd: projectFolder,
    env: environmentOf(env),
  })
  const origin = await printedAddress(child)
  const database = new Database(join(data, 'ringproof.sqlite'), { readonly: true })
  return {
    origin,
    ask: (sql) => String(Object.values(database.prepare(sql).get() as object)[0]),
    stop: async () => {
      database.close()
      const ended = new Promise((resolve) => child.once('close', resolve))
      child.kill('SIGTERM')
      await ended
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

async function printedAddress(child: ChildProcess): Promise<string> {
  let printed = ''
  child.stdout?.setEncoding('utf8').on('data', (text: string) => (printed += text))
  child.stderr?.setEncoding('utf8').on('data', (text: string) => (printed += text))
  for (let waitedMs = 0; waitedMs < 20_000; waitedMs += 10) {
    const address = / (https?:\/\/\S+)\n/.exec(printed)?.[1]
    if (address !== undefined) return address
    if (child.exitCode !== null) break
    await sleep(10)
  }
  throw new Error(`the server did not start: ${printed}`)
}
