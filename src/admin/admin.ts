import { parseArgs } from 'node:util'
import { adminWords } from '../../views/words/en/admin.ts'
import { errorSentence } from '../../views/words/en/errors.ts'
import { operatorSentence } from '../../views/words/en/operator-faults.ts'
import { AppError } from '../domain/app-error.ts'
import { OperatorError } from '../domain/operator-error.ts'
import { demo } from './demo.ts'
import { backupTo, restoreFrom, verify } from './keep.ts'
import { type OptionName, type Options, optionNames } from './options.ts'
import { tokenAdd, tokenRevoke } from './token.ts'
import { UsageError } from './usage-error.ts'
import { userAdd } from './user-add.ts'
import { userPassword } from './user-password.ts'

type Command = {
  readonly takes: readonly OptionName[]
  /** What stands behind the verb; '' where nothing does. */
  readonly operand: '' | 'FILE'
  readonly run: (options: Options, operand: string) => string | Promise<string>
}

const commands: Readonly<Record<string, Command>> = {
  'user add': {
    takes: ['name', 'role', 'customer', 'display', 'department'],
    operand: '',
    run: userAdd,
  },
  'user password': { takes: ['name'], operand: '', run: userPassword },
  'token add': { takes: ['user', 'label'], operand: '', run: tokenAdd },
  'token revoke': { takes: ['user', 'label'], operand: '', run: tokenRevoke },
  backup: { takes: [], operand: 'FILE', run: (_, file) => backupTo(file) },
  restore: { takes: [], operand: 'FILE', run: (_, file) => restoreFrom(file) },
  verify: { takes: [], operand: '', run: verify },
  demo: { takes: [], operand: '', run: demo },
}

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
    options: { help: { type: 'boolean', short: 'h' }, ...textOptions },
  })
  if (values.help) return adminWords.help
  if (positionals.length === 0) throw new UsageError(adminWords.noVerb)
  const { command, operands } = findCommand(positionals)
  const { help: _, ...options } = values
  const foreign = optionNames.find((name) => name in options && !command.takes.includes(name))
  if (foreign !== undefined) throw new UsageError(adminWords.foreignOption(`--${foreign}`))
  if (command.operand !== '' && !operands[0]) {
    throw new UsageError(adminWords.missing(command.operand))
  }
  const surplus = operands[command.operand === '' ? 0 : 1]
  if (surplus !== undefined) throw new UsageError(adminWords.surplus(surplus))
  return command.run(options, operands[0] ?? '')
}

const textOptions = Object.fromEntries(
  optionNames.map((name) => [name, { type: 'string' }]),
) as Record<OptionName, { type: 'string' }>

/** A verb is one word or two. */
function findCommand(words: readonly string[]): { command: Command; operands: readonly string[] } {
  for (const length of [2, 1]) {
    const verb = words.slice(0, length).join(' ')
    const command = Object.hasOwn(commands, verb) ? commands[verb] : undefined
    if (command !== undefined) return { command, operands: words.slice(length) }
  }
  throw new UsageError(adminWords.unknownVerb(words.join(' ')))
}

function isParseError(error: unknown): boolean {
  const code = (error as { code?: unknown } | null)?.code
  return typeof code === 'string' && code.startsWith('ERR_PARSE_ARGS')
}

/** One line, whatever went wrong: a program reads it as well. */
function sentenceOf(error: unknown): string {
  if (error instanceof AppError) return errorSentence(error.reason, error.details)
  if (error instanceof OperatorError) return oneLine(operatorSentence(error.fault))
  const message = error instanceof Error ? error.message : String(error)
  return oneLine(message)
}

function oneLine(text: string): string {
  return text.trim().replace(/\s*\n\s*/g, ' ')
}
