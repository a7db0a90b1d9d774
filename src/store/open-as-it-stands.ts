import Database from 'better-sqlite3'
import { type Store, storeOf } from './open.ts'

/** Opens a database for reading, whatever version it is of: nothing is migrated. */
export function openAsItStands(file: string): Store {
  const raw = new Database(file, { readonly: true, fileMustExist: true })
  raw.pragma('busy_timeout = 5000')
  return { ...storeOf(raw), close: () => raw.close() }
}
