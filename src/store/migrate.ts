import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type Database from 'better-sqlite3'

type Done = { readonly position: number; readonly name: string; readonly hash: string }
type Step = { readonly name: string; readonly sql: string; readonly hash: string }

/**
 * Brings a database up to the migrations in `folder`, in one immediate transaction.
 * Foreign keys are off outside the transaction (inside it the pragma is ignored, and a table
 * rebuild would empty child tables); edited, missing or newer migrations are refused.
 * @param at RFC 3339, written beside each step
 * @returns how many steps were applied
 */
export function migrate(raw: Database.Database, folder: string, at: string): number {
  const steps = readSteps(folder)
  const foreignKeys = raw.pragma('foreign_keys', { simple: true })
  raw.pragma('foreign_keys = OFF')
  try {
    raw.exec(`CREATE TABLE IF NOT EXISTS migration (
      position INTEGER PRIMARY KEY, name TEXT NOT NULL, hash TEXT NOT NULL, applied_at TEXT NOT NULL
    ) STRICT`)
    return raw.transaction(() => apply(raw, steps, at)).immediate()
  } finally {
    raw.pragma(`foreign_keys = ${foreignKeys ? 'ON' : 'OFF'}`)
  }
}

function readSteps(folder: string): Step[] {
  const journal = JSON.parse(readFileSync(join(folder, 'journal.json'), 'utf8')) as {
    index: number
    name: string
  }[]
  return journal.map((entry, index) => {
    if (entry.index !== index) {
      throw new Error(`migration journal: ${entry.name} has index ${entry.index}, not ${index}`)
    }
    const sql = readFileSync(join(folder, `${entry.name}.sql`), 'utf8')
    return { name: entry.name, sql, hash: createHash('sha256').update(sql).digest('hex') }
  })
}

function apply(raw: Database.Database, steps: readonly Step[], at: string): number {
  const done = raw.prepare('SELECT position, name, hash FROM migration ORDER BY position').all()
  if (done.length > steps.length) {
    throw new Error(
      `the database has ${done.length} migrations and this version knows ${steps.length}: ` +
        'start the newer version that wrote it',
    )
  }
  for (const [index, row] of (done as Done[]).entries()) {
    const step = steps[index]
    if (step === undefined || step.name !== row.name || step.hash !== row.hash) {
      throw new Error(`migration ${row.name} was changed after it was applied`)
    }
  }
  const insert = raw.prepare('INSERT INTO migration VALUES (?, ?, ?, ?)')
  for (const [index, step] of steps.entries()) {
    if (index < done.length) continue
    raw.exec(step.sql)
    if (!raw.inTransaction) throw new Error(`migration ${step.name} ends the transaction itself`)
    insert.run(index, step.name, step.hash, at)
  }
  const broken = raw.pragma('foreign_key_check') as unknown[]
  if (broken.length > 0) throw new Error(`foreign_key_check finds ${broken.length} broken rows`)
  return steps.length - done.length
}
