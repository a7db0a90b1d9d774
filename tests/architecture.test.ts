import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { cruise, type ICruiseResult, type IModule } from 'dependency-cruiser'
import { beforeAll, describe, expect, test } from 'vitest'

const root = fileURLToPath(new URL('..', import.meta.url))

/** Who may import whom, room by room (DEVELOPERS.md). A room may always import itself. */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  'src/science': [],
  'src/plots': ['src/science'],
  'src/domain': ['src/science'],
  'src/store': ['src/domain', 'src/science'],
  'views/words': ['src/domain', 'src/science'],
  views: ['views/words', 'src/domain', 'src/plots', 'src/science'],
  reports: ['views/words', 'src/domain', 'src/plots', 'src/science'],
  'src/web': ['views', 'views/words', 'reports', 'src/store', 'src/domain', 'src/science'],
  'src/workers': ['src/science'],
  'src/admin': ['views/words', 'src/web', 'src/store', 'src/domain', 'src'],
  // The demo reads its pictures while it is built: no page waits for it.
  fixtures: ['src/web', 'src/workers', 'src/store', 'src/domain', 'src/science', 'src'],
  src: ['src/web', 'src/store', 'src/domain', 'views/words', 'fixtures'],
}

/** Packages by the only rooms that may know them. */
const packages: Readonly<Record<string, readonly string[]>> = {
  'drizzle-orm': ['src/store'],
  'better-sqlite3': ['src/store', 'fixtures'],
  hono: ['src/web', 'views'],
  '@hono/node-server': ['src/web', 'src'],
  pdfkit: ['reports'],
  uqr: ['reports', 'src/plots'],
  '@node-rs/argon2': ['src/web', 'fixtures'],
  sharp: ['src/workers'],
}

let modules: readonly IModule[] = []

beforeAll(async () => {
  process.chdir(root)
  const { output } = await cruise(['src', 'views', 'reports', 'fixtures'], {
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(\\.build|data)' },
  })
  modules = (output as ICruiseResult).modules
})

/** The innermost room that a path lies in. */
function roomOf(path: string): string | undefined {
  return Object.keys(mayImport)
    .filter((room) => path.startsWith(`${room}/`))
    .sort((a, b) => b.length - a.length)[0]
}

const ours = () => modules.filter((one) => roomOf(one.source) !== undefined)
const edges = () =>
  ours().flatMap((one) =>
    one.dependencies.map((to) => ({ from: one.source, to: to.resolved, isCycle: to.circular })),
  )

describe('the house', () => {
  test('was really looked at: modules and imports were found in every room', () => {
    expect(ours().length).toBeGreaterThan(200)
    expect(edges().length).toBeGreaterThan(500)
    const rooms = new Set(ours().map((one) => roomOf(one.source)))
    expect([...rooms].sort()).toEqual(Object.keys(mayImport).sort())
  })

  test('holds the directions of import', () => {
    const wrong = edges().filter(({ from, to }) => {
      const [fromRoom, toRoom] = [roomOf(from), roomOf(to)]
      if (fromRoom === undefined || toRoom === undefined || fromRoom === toRoom) return false
      return !mayImport[fromRoom]?.includes(toRoom)
    })
    expect(wrong.map(({ from, to }) => `${from} imports ${to}`)).toEqual([])
  })

  test('has no cycles', () => {
    expect(
      edges()
        .filter((one) => one.isCycle)
        .map((one) => `${one.from} → ${one.to}`),
    ).toEqual([])
  })

  test('keeps each package in its room', () => {
    const known = edges().filter(({ to }) => to.includes('node_modules/'))
    expect(known.length).toBeGreaterThan(20)
    const wrong = known.filter(({ from, to }) => {
      const name = /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(to)?.[1] ?? ''
      const rooms = packages[name]
      return rooms !== undefined && !rooms.includes(roomOf(from) ?? '')
    })
    expect(wrong.map(({ from, to }) => `${from} imports ${to}`)).toEqual([])
  })

  test('lets nothing import tests', () => {
    expect(edges().filter(({ to }) => to.startsWith('tests/'))).toEqual([])
  })
})

/** Tracked and new files, as git sees them: what the next clone will hold. */
function files(): readonly string[] {
  return execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
    cwd: root,
    encoding: 'utf8',
  })
    .split('\n')
    .filter((path) => path !== '')
}

const sources = () =>
  files().filter((path) => /^(src|views|reports|fixtures\/demo)\/.*\.(ts|tsx)$/.test(path))
const read = (path: string) => readFileSync(join(root, path), 'utf8')

describe('the files', () => {
  test('stand at the top level as the house has it, and nothing else does', () => {
    const top = new Set(files().map((path) => path.split('/')[0] ?? ''))
    const seen = [...top].filter((name) => !name.startsWith('.')).sort()
    expect(seen).toEqual(
      [
        'DEVELOPERS.md',
        'README.md',
        'fixtures',
        'migrations',
        'package-lock.json',
        'package.json',
        'reports',
        'src',
        'tests',
        'tsconfig.json',
        'views',
      ].sort(),
    )
  })

  test('are short: 250 lines at most, word files apart', () => {
    expect(sources().length).toBeGreaterThan(200)
    const long = sources()
      .filter((path) => !path.startsWith('views/words/'))
      .filter((path) => read(path).split('\n').length > 251)
    expect(long).toEqual([])
  })

  test('are named in kebab-case', () => {
    const odd = sources().filter((path) => !/^([a-z0-9.-]+\/)+[a-z0-9.-]+\.tsx?$/.test(path))
    expect(odd).toEqual([])
  })

  test('export by name, one main thing each in science', () => {
    const science = sources().filter((path) => path.startsWith('src/science/'))
    expect(science.length).toBeGreaterThan(40)
    const wrong = science.filter(
      (path) => (read(path).match(/^export function /gm) ?? []).length > 1,
    )
    expect(wrong).toEqual([])
    const defaults = sources().filter((path) => /^export default/m.test(read(path)))
    expect(defaults).toEqual([])
  })

  test('touch clock, chance and environment only where programs begin', () => {
    const allowed = /^src\/(main\.ts|admin\/|workers\/)/
    const pattern = /\bDate\.now\(|new Date\(\)|Math\.random\(|process\.env\b/
    const wrong = sources().filter((path) => !allowed.test(path) && pattern.test(read(path)))
    expect(wrong).toEqual([])
  })

  test('of views carry no inline style, script or handler', () => {
    const views = sources().filter((path) => path.startsWith('views/') && path.endsWith('.tsx'))
    expect(views.length).toBeGreaterThan(40)
    const events = 'click|change|input|load|error|submit|focus|blur|key\\w+|mouse\\w+|pointer\\w+'
    const pattern = new RegExp(`\\sstyle=|\\son(${events})=|hx-on|["']js:|javascript:`)
    expect(views.filter((path) => pattern.test(read(path)))).toEqual([])
  })

  test('name no path of a machine and no registry host', () => {
    // Spelled in parts, so that this test does not find itself.
    const hosts = ['registry.', 'npmjs', '.org'].join('')
    const pattern = new RegExp(`(^|[\\s"'\`(])/(work|home|root)/|${hosts}`, 'm')
    const texts = files().filter((path) => /\.(ts|tsx|js|json|md|sql|css|sh)$/.test(path))
    expect(texts.length).toBeGreaterThan(300)
    expect(texts.filter((path) => pattern.test(read(path)))).toEqual([])
  })
})
