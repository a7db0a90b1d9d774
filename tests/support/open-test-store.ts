import { fileURLToPath } from 'node:url'
import Database from 'better-sqlite3'
import { openStore, type Store, storeOf } from '../../src/store/open.ts'
import { addCast, castAt } from './cast.ts'

export const migrationsFolder = fileURLToPath(new URL('../../migrations', import.meta.url))

let image: Buffer | undefined

/** A store of its own for one test: migrated, with the cast in it, opened from a kept image. */
export function openTestStore(): Store {
  image ??= drawImage()
  return storeOf(openImage(image))
}

/** Opens a serialized database with the pragmas that a store has. */
export function openImage(bytes: Buffer): Database.Database {
  const raw = new Database(bytes)
  raw.pragma('trusted_schema = OFF')
  raw.pragma('foreign_keys = ON')
  return raw
}

function drawImage(): Buffer {
  const store = openStore(':memory:', migrationsFolder, castAt)
  addCast(store)
  const bytes = store.raw.serialize()
  store.close()
  return bytes
}
