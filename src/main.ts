import { randomBytes } from 'node:crypto'
import { mkdirSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { type ServerType, serve } from '@hono/node-server'
import { demoAccounts } from '../fixtures/demo/accounts.ts'
import { demoWorkshop } from '../fixtures/demo/workshop.ts'
import { operatorSentence } from '../views/words/en/operator-faults.ts'
import { serverWords } from '../views/words/en/server.ts'
import { words } from '../views/words/en.ts'
import { type Config, originAt, readConfig } from './config.ts'
import { OperatorError } from './domain/operator-error.ts'
import type { Workshop } from './domain/workshop.ts'
import { isPart, loadDemo } from './load-demo.ts'
import { projectRoot } from './project-root.ts'
import { hasInventedData } from './store/has-invented-data.ts'
import { openStore, type Store } from './store/open.ts'
import { pruneExpired } from './store/prune-expired.ts'
import { createApp } from './web/app.ts'
import { readAssets } from './web/assets.ts'
import type { Shop } from './web/context.ts'
import { leaving } from './web/leaving.ts'
import { hashPassword, verifyPassword } from './web/password.ts'

/** Longest wait for requests in flight; closing the database after it still ends within 5 s. */
const longestStopMs = 4000

const root = projectRoot()
try {
  start(readConfig(process.env))
} catch (error) {
  refuse(messageOf(error))
}

function start(config: Config): void {
  const now = () => new Date()
  const isNew = prepareFolder(config.dataFolder)
  if (isNew && wantsDemo(config)) {
    if (isExposed(config)) throw new Error(serverWords.exposedDemoAsked(config.host))
    loadDemo(config.storeFile)
  }
  const store = open(config, now().toISOString())
  const isInvented = hasInventedData(store)
  if (isInvented && isExposed(config)) {
    store.close()
    throw new Error(serverWords.exposedDemo(config.host))
  }
  pruneExpired(store, now().toISOString())
  listen(config, store, {
    store,
    assets: readAssets(root),
    workshop: isInvented ? demoWorkshop : readWorkshop(config),
    now,
    randomBytes: (count) => randomBytes(count),
    hashPassword,
    verifyPassword,
    demoAccounts: isInvented && config.isLoopback ? demoAccounts : [],
    isInvented,
  })
}

/** The application is made once the port is known, before the first request can come in. */
function listen(config: Config, store: Store, shop: Omit<Shop, 'origin'>): void {
  let app: ReturnType<typeof createApp> | undefined
  const options: Parameters<typeof serve>[0] = {
    fetch: (request, env) => {
      if (app === undefined) throw new Error('a request came in before the server listened')
      return app.fetch(request, env)
    },
    hostname: config.host.replace(/[[\]]/g, ''),
    port: config.port,
  }
  const server = serve(options, ({ port }) => {
    const origin = originAt(config, port)
    app = createApp({ ...shop, origin })
    announce(config, origin, shop.isInvented)
  })
  server.on('error', (error: NodeJS.ErrnoException) => {
    store.close()
    const { host, port } = config
    const isTaken = error.code === 'EADDRINUSE'
    refuse(
      isTaken
        ? serverWords.portInUse(host, port)
        : serverWords.cannotListen(host, port, error.message),
    )
  })
  let isStopping = false
  for (const signal of ['SIGTERM', 'SIGINT'] as const) {
    process.on(signal, () => {
      if (!isStopping) stop(server, store)
      isStopping = true
    })
  }
}

/** Whether the folder is new or empty; a copy that another start has under way does not count. */
function prepareFolder(folder: string): boolean {
  try {
    // Nobody else on the machine needs to read it: sessions and password hashes stand there.
    mkdirSync(folder, { recursive: true, mode: 0o700 })
    return readdirSync(folder).every(isPart)
  } catch (error) {
    throw new Error(serverWords.cannotUseFolder(folder, messageOf(error)))
  }
}

function wantsDemo(config: Config): boolean {
  return config.demo === 'on' || (config.demo === 'default' && config.isLoopback)
}

/** Accounts whose passwords are printed in public must never stand on a network by accident. */
function isExposed(config: Config): boolean {
  return !config.isLoopback && !config.mayExposeDemo
}

function open(config: Config, at: string): Store {
  try {
    return openStore(config.storeFile, join(root, 'migrations'), at)
  } catch (error) {
    throw new Error(serverWords.cannotOpen(config.storeFile, messageOf(error)))
  }
}

function readWorkshop(config: Config): Workshop {
  return {
    name: config.workshopName ?? words.chrome.workshopNotNamed,
    address: config.workshopAddress ?? words.chrome.workshopNoAddress,
  }
}

function announce(config: Config, origin: string, isInvented: boolean): void {
  process.stdout.write(`${words.chrome.listening} ${origin}\n`)
  if (config.hasNoName) process.stdout.write(`${serverWords.noOrigin}\n`)
  if (!isInvented) return
  process.stdout.write(`${words.chrome.demoLoaded}\n`)
  for (const one of demoAccounts) {
    process.stdout.write(`  ${one.role.padEnd(12)} ${one.name.padEnd(10)} ${one.password}\n`)
  }
}

/**
 * Finishes what is in flight, closes the database, and leaves within five seconds. A connection
 * that a browser keeps alive falls idle only after its last answer, so the idle are closed again
 * and again.
 */
function stop(server: ServerType, store: Store): void {
  const leave = () => {
    store.close()
    process.exit(0)
  }
  const sweep = () => {
    if ('closeIdleConnections' in server) server.closeIdleConnections()
  }
  leaving.abort()
  setTimeout(leave, longestStopMs)
  setInterval(sweep, 50)
  server.close(leave)
}

function messageOf(error: unknown): string {
  if (error instanceof OperatorError) return operatorSentence(error.fault)
  return error instanceof Error ? error.message : String(error)
}

function refuse(sentence: string): never {
  process.stderr.write(`${sentence}\n`)
  process.exit(1)
}
