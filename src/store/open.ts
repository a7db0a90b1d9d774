import Database from 'better-sqlite3'
import { type BetterSQLite3Database, drizzle } from 'drizzle-orm/better-sqlite3'
import { migrate } from './migrate.ts'

export type Store = {
  readonly raw: Database.Database
  readonly db: BetterSQLite3Database
  /** One immediate transaction; inside another one a savepoint. Never async. */
  readonly transact: <T>(work: () => T) => T
  readonly close: () => void
}

/**
 * Opens the database file (or `:memory:`), durable and migrated.
 * Busy timeout comes first, since the next line may already have to wait; WAL needs synchronous
 * FULL to keep an acknowledged record through a power cut.
 */
export function openStore(file: string, migrationsFolder: string, at: string): Store {
  const raw = new Database(file)
  try {
    raw.pragma('busy_timeout = 5000')
    raw.pragma('journal_mode = WAL')
    raw.pragma('synchronous = FULL')
    raw.pragma('trusted_schema = OFF')
    raw.pragma('foreign_keys = ON')
    migrate(raw, migrationsFolder, at)
  } catch (error) {
    raw.close()
    throw error
  }
  return storeOf(raw)
}

/** Wraps an open, migrated connection. */
export function storeOf(raw: Database.Database): Store {
  return {
    raw,
    db: drizzle(raw),
    transact: (work) =>
      raw.inTransaction ? raw.transaction(work)() : raw.transaction(work).immediate(),
    close: () => {
      // A stop doesn't wait for whoever reads just now: the log is whole without the checkpoint.
      raw.pragma('busy_timeout = 200')
      raw.pragma('wal_checkpoint(TRUNCATE)')
      raw.close()
    },
  }
}
