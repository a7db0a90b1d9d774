import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { type AddressInfo, createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { onTestFinished } from 'vitest'

export const projectFolder = fileURLToPath(new URL('../..', import.meta.url))
/** What `npm start` runs: builds where needed, then starts. */
export const door = join(projectFolder, 'src/start.js')
/** The built server itself: nothing that is edited meanwhile can build it anew. */
const builtMain = join(projectFolder, '.build/run/main.js')

export type Environment = Readonly<Record<string, string>>
export type Ended = {
  readonly code: number | null
  readonly signal: NodeJS.Signals | null
  readonly stdout: string
  readonly stderr: string
}
export type Running = {
  readonly process: ChildProcess
  readonly ended: Promise<Ended>
  readonly stdout: () => string
}
export type Server = Running & {
  /** As printed, `http://127.0.0.1:41234`. */
  readonly address: string
  readonly stop: (signal?: NodeJS.Signals) => Promise<Ended>
}

/** A folder of its own for one test, gone afterwards; the data folder in it is not made yet. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'ringproof-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

/** The environment of a child: nothing of ours but what is named. */
export function environmentOf(named: Environment): NodeJS.ProcessEnv {
  const kept = Object.entries(process.env).filter(
    ([name]) => !/^(RINGPROOF|VITEST|NODE_)/.test(name),
  )
  return { ...Object.fromEntries(kept), ...named }
}

/** Starts a program and gathers what it prints; it is killed when the test ends. */
export function run(
  command: string,
  args: readonly string[],
  options: { readonly env: Environment; readonly stdin?: string } = { env: {} },
): Running {
  const child = spawn(command, [...args], { cwd: projectFolder, env: environmentOf(options.env) })
  let stdout = ''
  let stderr = ''
  child.stdout.setEncoding('utf8').on('data', (text: string) => (stdout += text))
  child.stderr.setEncoding('utf8').on('data', (text: string) => (stderr += text))
  // A program that refuses before it reads closes the pipe: that is its answer, not ours.
  child.stdin.on('error', () => undefined)
  child.stdin.end(options.stdin ?? '')
  const ended = new Promise<Ended>((resolve, reject) => {
    child.once('error', reject)
    child.once('close', (code, signal) => resolve({ code, signal, stdout, stderr }))
  })
  onTestFinished(async () => {
    if (child.exitCode === null && child.signalCode === null) child.kill('SIGKILL')
    await ended
  })
  return { process: child, ended, stdout: () => stdout }
}

/** Runs the built server to its refusal, or until it serves and is stopped. */
export function runServer(env: Environment): Running {
  return run(process.execPath, [builtMain], { env: { RINGPROOF_PORT: '0', ...env } })
}

/** Starts the built server on a free port of loopback and waits until it serves pages. */
export function startServer(dataFolder: string, env: Environment = {}): Promise<Server> {
  const named = { RINGPROOF_DATA: dataFolder, RINGPROOF_DEMO: 'off', ...env }
  return whenServing(runServer(named))
}

/** Waits for the printed address and for /healthz. @throws Error with what it printed instead */
export async function whenServing(running: Running): Promise<Server> {
  let end: Ended | undefined
  void running.ended.then((ended) => {
    end = ended
  })
  for (;;) {
    if (end !== undefined) throw new Error(`the server ended: ${JSON.stringify(end)}`)
    const address = / (https?:\/\/\S+)\n/.exec(running.stdout())?.[1]
    if (address !== undefined && (await isServing(address))) {
      const stop = (signal: NodeJS.Signals = 'SIGTERM') => {
        running.process.kill(signal)
        return running.ended
      }
      return { ...running, address, stop }
    }
    await sleep(5)
  }
}

async function isServing(address: string): Promise<boolean> {
  try {
    const answer = await fetch(`${address}/healthz`)
    return (await answer.text()) === '{"status":"ok"}' && answer.status === 200
  } catch {
    return false
  }
}

export function sleep(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms))
}

/** Runs one command of the operator on a data folder. */
export function admin(
  dataFolder: string,
  args: readonly string[],
  options: { readonly stdin?: string; readonly env?: Environment } = {},
): Promise<Ended> {
  const env = { RINGPROOF_DATA: dataFolder, ...options.env }
  const given = options.stdin === undefined ? {} : { stdin: options.stdin }
  return run(process.execPath, [door, 'admin', ...args], { env, ...given }).ended
}

/** A port that was free a moment ago, for a server whose printed address tells none. */
export async function freePort(): Promise<number> {
  const server = createServer()
  await new Promise<void>((resolve) => server.listen(0, resolve))
  const { port } = server.address() as AddressInfo
  await new Promise((resolve) => server.close(resolve))
  return port
}
