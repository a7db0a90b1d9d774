import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { describe, expect, it } from 'vitest'

const root = fileURLToPath(new URL('../', import.meta.url))
const science = join(root, 'src/science')

const files = readdirSync(science, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .sort()
  .map((name) => {
    const text = readFileSync(join(science, name), 'utf8')
    const functions = [...text.matchAll(/^export (?:async )?function (\w+)/gm)].map(
      (m) => m[1] ?? '',
    )
    const examples = [...text.matchAll(/^ \* @example ([^@]+?) \/\/ (\S+)$/gm)].map((m) => ({
      name,
      // An example may go on over lines; each starts with the star of the comment.
      expression: (m[1] ?? '').replaceAll(/\n \* */g, ' '),
      printed: m[2] ?? '',
    }))
    const exampleTagCount = text.match(/@example/g)?.length ?? 0
    return { name, text, functions, examples, exampleTagCount }
  })
const withFunction = files.filter((file) => file.functions.length > 0)
const examples = files.flatMap((file) => file.examples)

/** Executed examples; the last test fails when there were none. */
let executedCount = 0

/** Says whether a result is the printed text, to the digits printed. */
function agrees(result: unknown, printed: string): boolean {
  if (typeof result !== 'number') return String(result) === printed
  if (!/^-?\d+(\.\d+)?$/.test(printed)) return false
  const decimals = printed.split('.')[1]?.length ?? 0
  // Half a unit of the last printed digit, and the rounding of this subtraction.
  return Math.abs(result - Number(printed)) <= 0.5 * 10 ** -decimals * (1 + 1e-9)
}

async function execute(file: string, expression: string): Promise<unknown> {
  const module: Record<string, unknown> = await import(pathToFileURL(join(science, file)).href)
  const names = Object.keys(module)
  return new Function(...names, `return (${expression})`)(...names.map((name) => module[name]))
}

describe('the examples in the doc comments of src/science', () => {
  it.each(examples)('gives $printed: $expression', async ({ name, expression, printed }) => {
    const result = await execute(name, expression)
    executedCount++
    expect(agrees(result, printed), `${name}: got ${String(result)}, printed ${printed}`).toBe(true)
  })

  it.each(withFunction)(
    'has an example of every function of $name that a test can execute',
    (file) => {
      expect(file.functions).toHaveLength(1)
      expect(file.exampleTagCount).toBeGreaterThan(0)
      expect(file.examples).toHaveLength(file.exampleTagCount)
      for (const functionName of file.functions) {
        expect(
          file.examples.some(({ expression }) => expression.startsWith(`${functionName}(`)),
        ).toBe(true)
      }
    },
  )

  it('tells a wrong digit from a right one', () => {
    expect(agrees(0.88134, '0.8813')).toBe(true)
    expect(agrees(0.88134, '0.8814')).toBe(false)
    expect(agrees(Number.NaN, '0.8813')).toBe(false)
    expect(agrees('pass', 'fail')).toBe(false)
    expect(agrees(1, 'pass')).toBe(false)
  })

  it('executed an example for every function and did not run empty', () => {
    expect(withFunction.length).toBeGreaterThan(30)
    expect(executedCount).toBe(examples.length)
    expect(executedCount).toBeGreaterThanOrEqual(withFunction.length)
  })
})

describe('the tests of src/science', () => {
  it.each(withFunction)('include a file of their own for $name that calls it', (file) => {
    const path = join(root, 'tests/science', file.name.replace(/\.ts$/, '.test.ts'))
    const text = readFileSync(path, 'utf8')
    const calls = file.functions.filter(
      (name) => text.includes(`${name}(`) || text.includes(`${name},`),
    )
    expect(calls, relative(root, path)).toEqual(file.functions)
    expect(text).toMatch(/\bit(\.each\([\s\S]+?\))?\(/)
  })
})
