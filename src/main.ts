import { randomBytes } from 'node:crypto'
import { copyFileSync, existsSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { type ServerType, serve } from '@hono/node-server'
import { demoAccounts } from '../fixtures/demo/accounts.ts'
import { demoWorkshop } from '../fixtures/demo/workshop.ts'
import { words } from '../views/words/en.ts'
import { type Config, readConfig } from './config.ts'
import type { Workshop } from './domain/workshop.ts'
import { projectRoot } from './project-root.ts'
import { hasInventedData } from './store/has-invented-data.ts'
import { openStore, type Store } from './store/open.ts'
import { pruneExpired } from './store/prune-expired.ts'
import { createApp } from './web/app.ts'
import { readAssets } from './web/assets.ts'
import { hashPassword, verifyPassword } from './web/password.ts'

const root = projectRoot()
try {
  start(readConfig(process.env))
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`)
  process.exit(1)
}

function start(config: Config): void {
  const now = () => new Date()
  mkdirSync(config.dataFolder, { recursive: true })
  if (!existsSync(config.storeFile) && wantsDemo(config)) loadDemo(config)
  const store = openStore(config.storeFile, join(root, 'migrations'), now().toISOString())
  const isInvented = hasInventedData(store)
  refuseExposure(config, isInvented)
  pruneExpired(store, now().toISOString())
  const app = createApp({
    store,
    assets: readAssets(root),
    workshop: isInvented ? demoWorkshop : readWorkshop(config),
    origin: config.origin,
    now,
    randomBytes: (count) => randomBytes(count),
    hashPassword,
    verifyPassword,
    demoAccounts: isInvented && config.isLoopback ? demoAccounts : [],
    isInvented,
  })
  const options = {
    fetch: app.fetch,
    hostname: config.host.replace(/[[\]]/g, ''),
    port: config.port,
  }
  const server = serve(options, (address) => announce(config, address.port, isInvented))
  server.on('error', (error) => {
    process.stderr.write(`Can't listen on ${config.host}:${config.port}: ${error.message}\n`)
    process.exit(1)
  })
  for (const signal of ['SIGTERM', 'SIGINT'] as const) process.on(signal, () => stop(server, store))
}

function wantsDemo(config: Config): boolean {
  return config.demo === 'on' || (config.demo === 'default' && config.isLoopback)
}

/** The invented workshop is drawn once, when the app is built; a first start copies it. */
function loadDemo(config: Config): void {
  const drawn = join(root, '.build/demo.sqlite')
  if (!existsSync(drawn)) throw new Error('the invented workshop is not built: run "npm start"')
  copyFileSync(drawn, config.storeFile)
}

/** Accounts whose passwords are printed in public must never stand on a network by accident. */
function refuseExposure(config: Config, isInvented: boolean): void {
  if (!isInvented || config.isLoopback || config.mayExposeDemo) return
  throw new Error(
    `RINGPROOF_HOST is ${config.host} and the data folder holds the invented workshop, whose ` +
      'passwords are public. Use an empty RINGPROOF_DATA with RINGPROOF_DEMO=off, or say ' +
      'RINGPROOF_EXPOSE_DEMO=yes.',
  )
}

function readWorkshop(config: Config): Workshop {
  return {
    name: config.workshopName ?? words.chrome.workshopNotNamed,
    address: config.workshopAddress ?? words.chrome.workshopNoAddress,
  }
}

function announce(config: Config, port: number, isInvented: boolean): void {
  const address = config.port === port ? config.origin : config.origin.replace(/:\d+$/, `:${port}`)
  process.stdout.write(`${words.chrome.listening} ${address}\n`)
  if (!isInvented) return
  process.stdout.write(`${words.chrome.demoLoaded}\n`)
  for (const one of demoAccounts) {
    process.stdout.write(`  ${one.role.padEnd(12)} ${one.name.padEnd(10)} ${one.password}\n`)
  }
}

/** Finishes what is in flight, closes the database, and leaves within five seconds. */
function stop(server: ServerType, store: Store): void {
  const giveUp = setTimeout(() => finish(store), 4000)
  server.close(() => {
    clearTimeout(giveUp)
    finish(store)
  })
  if ('closeIdleConnections' in server) server.closeIdleConnections()
}

function finish(store: Store): void {
  store.close()
  process.exit(0)
}
