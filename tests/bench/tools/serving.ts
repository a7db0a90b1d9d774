import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { projectRoot } from '../../../src/project-root.ts'
import { environmentOf } from '../../support/machine.ts'

export type Serving = { readonly origin: string; readonly stop: () => Promise<void> }

/** Starts a server by this very Node and waits until it prints its address. */
export async function serving(
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<Serving> {
  const child = spawn(process.execPath, [...args], {
    cwd: projectRoot(),
    env: environmentOf(env),
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const ended = once(child, 'close')
  let printed = ''
  child.stderr.setEncoding('utf8').on('data', (text: string) => (printed += text))
  const origin = await new Promise<string>((resolve, reject) => {
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      printed += text
      const address = /(http:\/\/\S+)\n/.exec(printed)?.[1]
      if (address !== undefined) resolve(address)
    })
    child.once('close', () => reject(new Error(`the server did not start: ${printed}`)))
  })
  return {
    origin,
    stop: async () => {
      child.kill('SIGTERM')
      await ended
    },
  }
}
