import { parseArgs } from 'node:util'
import { adminWords } from '../../views/words/en/admin.ts'
import { errorSentence } from '../../views/words/en/errors.ts'
import { AppError } from '../domain/app-error.ts'
import { demo } from './demo.ts'
import { backupTo, restoreFrom, verify } from './keep.ts'
import { tokenAdd, tokenRevoke } from './token.ts'
import { UsageError } from './usage-error.ts'
import { userAdd } from './user-add.ts'

/** Runs one command of the operator and sets the exit code: 0 done, 1 refused, 2 wrong usage. */
export async function admin(args: readonly string[]): Promise<void> {
  try {
    process.stdout.write(`${await run(args)}\n`)
  } catch (error) {
    const isUsage = error instanceof UsageError || isParseError(error)
    const sentence = sentenceOf(error)
    process.stderr.write(`${isUsage ? adminWords.usage(sentence) : sentence}\n`)
    process.exitCode = isUsage ? 2 : 1
  }
}

function run(args: readonly string[]): string | Promise<string> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    strict: true,
    options: {
      help: { type: 'boolean', short: 'h' },
      name: { type: 'string' },
      role: { type: 'string' },
      customer: { type: 'string' },
      display: { type: 'string' },
      department: { type: 'string' },
      user: { type: 'string' },
      label: { type: 'string' },
    },
  })
  if (values.help) return adminWords.help
  const [verb, what, ...more] = positionals
  if (verb === undefined) throw new UsageError(adminWords.noVerb)
  if (more.length > 0) throw new UsageError(adminWords.unknownVerb(positionals.join(' ')))
  if (verb === 'user' && what === 'add') return userAdd(values)
  if (verb === 'token' && what === 'add') return tokenAdd(values)
  if (verb === 'token' && what === 'revoke') return tokenRevoke(values)
  if (verb === 'backup') return backupTo(what)
  if (verb === 'restore') return restoreFrom(what)
  if (verb === 'verify' && what === undefined) return verify()
  if (verb === 'demo' && what === undefined) return demo()
  throw new UsageError(adminWords.unknownVerb(positionals.join(' ')))
}

function isParseError(error: unknown): boolean {
  const code = (error as { code?: unknown } | null)?.code
  return typeof code === 'string' && code.startsWith('ERR_PARSE_ARGS')
}

function sentenceOf(error: unknown): string {
  if (error instanceof AppError) return errorSentence(error.reason, error.details)
  return error instanceof Error ? error.message : String(error)
}
