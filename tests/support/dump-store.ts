import type { Store } from '../../src/store/open.ts'

/** Every row of every table as text: two stores are the same where their dumps are. */
export function dumpStore(store: Store): string {
  const names = store.raw
    .prepare("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name")
    .pluck()
    .all() as string[]
  const tables = names.map((name) => {
    const rows = store.raw.prepare(`SELECT * FROM "${name}"`).all()
    return [name, rows.map((row) => JSON.stringify(row)).sort()]
  })
  return JSON.stringify(tables, null, 1)
}
