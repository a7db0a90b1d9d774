import { readFileSync } from 'node:fs'
import { createInterface } from 'node:readline/promises'
import { Writable } from 'node:stream'
import { adminWords } from '../../views/words/en/admin.ts'

/**
 * The password from standard input: all of it, less one line end, or at a terminal one line that
 * is asked for and not shown.
 */
export async function readPassword(): Promise<string> {
  if (!process.stdin.isTTY) return readFileSync(0, 'utf8').replace(/\r?\n$/, '')
  process.stderr.write(adminWords.askPassword)
  const nowhere = new Writable({ write: (_chunk, _encoding, done) => done() })
  const terminal = createInterface({ input: process.stdin, output: nowhere, terminal: true })
  try {
    return await terminal.question('')
  } finally {
    terminal.close()
    process.stderr.write('\n')
  }
}
