import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { migrationsFolder } from '../support/open-test-store.ts'

export const hashesFile = new URL('hashes.json', import.meta.url)

/** SHA-256 of each migration in the folder, by name, in order. */
export function readHashes(): Record<string, string> {
  const names = readdirSync(migrationsFolder).filter((name) => name.endsWith('.sql'))
  return Object.fromEntries(
    names.sort().map((name) => {
      const bytes = readFileSync(join(migrationsFolder, name))
      return [name.slice(0, -'.sql'.length), createHash('sha256').update(bytes).digest('hex')]
    }),
  )
}

/** The hashes as they landed. */
export function readFrozen(): Record<string, string> {
  return JSON.parse(readFileSync(hashesFile, 'utf8')) as Record<string, string>
}
