import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type Database from 'better-sqlite3'
import { OperatorError } from '../domain/operator-error.ts'

type Done = { readonly position: number; readonly name: string; readonly hash: string }
type Step = { readonly name: string; readonly sql: string; readonly hash: string }

/**
 * Brings a database up to the migrations in `folder`, in one immediate transaction.
 * Foreign keys are off outside the transaction (inside it the pragma is ignored, and a table
 * rebuild would empty child tables); edited, missing or newer migrations are refused.
 * @param at RFC 3339, written beside each step
 * @returns how many steps were applied
 * @throws OperatorError where the database is not one that these steps lead on from, RangeError
 *   where the steps themselves are written wrongly
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
      throw new RangeError(
        `migrate requires index ${index} of ${entry.name} in the journal, got ${entry.index}`,
      )
    }
    const sql = readFileSync(join(folder, `${entry.name}.sql`), 'utf8')
    return { name: entry.name, sql, hash: createHash('sha256').update(sql).digest('hex') }
  })
}

function apply(raw: Database.Database, steps: readonly Step[], at: string): number {
  const done = raw.prepare('SELECT position, name, hash FROM migration ORDER BY position').all()
  if (done.length > steps.length) {
    const counts = { doneCount: done.length, knownCount: steps.length }
    throw new OperatorError({ kind: 'newer-database', ...counts })
  }
  for (const [index, row] of (done as Done[]).entries()) {
    const step = steps[index]
    if (step === undefined || step.name !== row.name || step.hash !== row.hash) {
      throw new OperatorError({ kind: 'migration-changed', name: row.name })
    }
  }
  const insert = raw.prepare('INSERT INTO migration VALUES (?, ?, ?, ?)')
  for (const [index, step] of steps.entries()) {
    if (index < done.length) continue
    raw.exec(step.sql)
    if (!raw.inTransaction) {
      throw new RangeError(
        `migrate requires steps that leave its transaction open, got ${step.name}`,
      )
    }
    insert.run(index, step.name, step.hash, at)
  }
  const { length: rowCount } = raw.pragma('foreign_key_check') as unknown[]
  if (rowCount > 0) throw new OperatorError({ kind: 'broken-keys', rowCount })
  return steps.length - done.length
}
