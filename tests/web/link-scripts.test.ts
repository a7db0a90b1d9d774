import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { readAssets } from '../../src/web/assets.ts'
import { linkScripts } from '../../src/web/link-scripts.ts'

let folder = ''

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'ringproof-scripts-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const write = (name: string, text: string) => {
  writeFileSync(join(folder, name), text)
  return join(folder, name)
}

function linked(file: string): Map<string, string> {
  const served = new Map<string, string>()
  const add = (name: string, text: string) => {
    served.set(name, text)
    return `/assets/x-${name}`
  }
  linkScripts(add, false)(file)
  return served
}

test('an import becomes the address of its file, once for all who import it', () => {
  write('deep.ts', 'export const deep: number = 1\n')
  write(
    'far.ts',
    "import { deep } from './deep.ts'\nexport type Far = string\nexport const far = deep\n",
  )
  const lines = [
    'import {',
    '  deep,',
    "} from './deep.ts'",
    "import { type Far, far } from './far.ts'",
    "import './far.ts'",
    "export const near: Far = far + deep + ` from './deep.ts'`",
  ]
  const near = write('near.ts', lines.join('\n'))
  const served = linked(near)
  expect([...served.keys()]).toEqual(['deep.js', 'far.js', 'near.js'])
  expect(served.get('far.js')).toContain("from '/assets/x-deep.js'")
  const text = served.get('near.js') ?? ''
  expect(text.match(/\/assets\/x-deep\.js/g)).toHaveLength(1)
  expect(text.match(/\/assets\/x-far\.js/g)).toHaveLength(2)
  expect(text).toContain("far + deep + ` from './deep.ts'`")
})

test('refuses what no browser has', () => {
  const file = write('node.ts', "import { join } from 'node:path'\nexport const a = join('b')\n")
  expect(() => linked(file)).toThrow('node:path')
})

test('every import of every script of ours is served', () => {
  const assets = readAssets(fileURLToPath(new URL('../..', import.meta.url)))
  const seen = new Set<string>()
  const follow = (path: string): void => {
    if (seen.has(path)) return
    seen.add(path)
    const asset = assets.find(path)
    expect(asset, path).toBeDefined()
    for (const [, next = ''] of (asset?.bytes.toString() ?? '').matchAll(/^.*from '([^']+)'/gm)) {
      follow(next)
    }
  }
  for (const name of ['survey', 'clock', 'face-photo', 'stepper']) follow(assets.script(name))
  expect(seen.size).toBeGreaterThan(3)
})
