// Run when migrations were added, before they land: `npm exec -- node tests/migrations/freeze.ts`.
// Adds the new hashes to hashes.json and keeps a filled store of this version in fixtures/stores.
import { existsSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { fillShop } from '../support/fill-shop.ts'
import { hashesFile, readFrozen, readHashes } from './read-hashes.ts'

const hashes = readHashes()
const frozen = existsSync(hashesFile) ? readFrozen() : {}
for (const [name, hash] of Object.entries(frozen)) {
  if (hashes[name] !== hash) throw new Error(`${name} has landed: write a new migration instead`)
}
const last = Object.keys(hashes).at(-1)
if (last === undefined) throw new Error('there are no migrations')
const file = new URL(`../../fixtures/stores/store-${last.slice(0, 4)}.sqlite`, import.meta.url)
if (existsSync(file)) throw new Error(`${fileURLToPath(file)} is there already`)
const { raw } = fillShop().store
raw.pragma('page_size = 1024') // a small store needs no large pages in the repository
raw.prepare('VACUUM INTO ?').run(fileURLToPath(file))
writeFileSync(hashesFile, `${JSON.stringify(hashes, null, 2)}\n`)
