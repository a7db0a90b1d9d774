import { resolve } from 'node:path'
import { OperatorError } from './domain/operator-error.ts'

/** The database's name in the data folder. */
export const storeName = 'ringproof.sqlite'

export type Config = {
  readonly host: string
  readonly port: number
  readonly dataFolder: string
  /** Where the store stands. */
  readonly storeFile: string
  /** `default`: the invented workshop is loaded into a new folder when bound to loopback. */
  readonly demo: 'on' | 'off' | 'default'
  readonly mayExposeDemo: boolean
  /**
   * The public address without a slash at its end: for links, QR codes and the origin check.
   * Undefined where the operator has not said: then it is the address listened on.
   */
  readonly origin: string | undefined
  readonly isLoopback: boolean
  /** Listens on every address and has been told none: links can't lead back here. */
  readonly hasNoName: boolean
  /** Printed at the head of certificates; undefined where the operator has not said. */
  readonly workshopName: string | undefined
  readonly workshopAddress: string | undefined
}

type Environment = Readonly<Record<string, string | undefined>>

/** Reads the environment it is handed. @throws OperatorError that names the variable and what it says */
export function readConfig(environment: Environment): Config {
  const host = environment.RINGPROOF_HOST || '127.0.0.1'
  const port = readPort(environment.RINGPROOF_PORT || '3000')
  const dataFolder = resolve(environment.RINGPROOF_DATA || './data')
  const isLoopback = ['127.0.0.1', 'localhost', '::1', '[::1]'].includes(host)
  const origin = readOrigin(environment.RINGPROOF_ORIGIN)
  return Object.freeze({
    host,
    port,
    dataFolder,
    storeFile: resolve(dataFolder, storeName),
    demo: readChoice('RINGPROOF_DEMO', environment.RINGPROOF_DEMO, ['on', 'off']) ?? 'default',
    mayExposeDemo:
      readChoice('RINGPROOF_EXPOSE_DEMO', environment.RINGPROOF_EXPOSE_DEMO, ['yes', 'no']) ===
      'yes',
    origin,
    isLoopback,
    hasNoName: origin === undefined && ['0.0.0.0', '::', '[::]'].includes(host),
    workshopName: environment.RINGPROOF_WORKSHOP_NAME || undefined,
    workshopAddress: environment.RINGPROOF_WORKSHOP_ADDRESS || undefined,
  })
}

/** The public address, once the port is known that was listened on (0 takes any free one). */
export function originAt(config: Config, port: number): string {
  const { host, origin } = config
  return (
    origin ?? `http://${host.includes(':') && !host.startsWith('[') ? `[${host}]` : host}:${port}`
  )
}

function readPort(text: string): number {
  const port = Number(text)
  const max = 65_535
  if (!/^\d{1,5}$/.test(text) || port > max) {
    throw new OperatorError({ kind: 'not-a-port', name: 'RINGPROOF_PORT', text, max })
  }
  return port
}

function readChoice<T extends string>(
  name: string,
  text: string | undefined,
  choices: readonly T[],
): T | undefined {
  if (text === undefined || text === '') return undefined
  const choice = choices.find((one) => one === text)
  if (choice === undefined) {
    throw new OperatorError({ kind: 'not-a-setting', name, text, choices })
  }
  return choice
}

function readOrigin(text: string | undefined): string | undefined {
  if (text === undefined || text === '') return undefined
  const said = { name: 'RINGPROOF_ORIGIN', text }
  let url: URL
  try {
    url = new URL(text)
  } catch {
    throw new OperatorError({ kind: 'not-an-address', ...said })
  }
  if (!['http:', 'https:'].includes(url.protocol) || url.href !== `${url.origin}/`) {
    throw new OperatorError({ kind: 'more-than-a-host', ...said })
  }
  return url.origin
}
