import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { styleOrder } from '../../views/styles/order.ts'
import { linkScripts } from './link-scripts.ts'

export type Asset = { readonly path: string; readonly type: string; readonly bytes: Buffer }
export type Assets = {
  readonly icon: string
  readonly style: string
  readonly htmx: string
  /** Address of a script in `views/browser`, by its base name. */
  readonly script: (name: string) => string
  readonly find: (path: string) => (Asset & { readonly gzip: () => Buffer }) | undefined
}

/**
 * Reads the few assets into memory, each under a name that carries its hash, so that a browser
 * may keep them for ever.
 * @param root the project's folder
 */
export function readAssets(root: string): Assets {
  const byPath = new Map<string, Asset & { gzip: () => Buffer }>()
  const add = (name: string, type: string, bytes: Buffer): string => {
    const hash = createHash('sha256').update(bytes).digest('base64url').slice(0, 12)
    const dot = name.lastIndexOf('.')
    const path = `/assets/${name.slice(0, dot)}-${hash}${name.slice(dot)}`
    let zipped: Buffer | undefined
    const gzip = () => {
      zipped ??= gzipSync(bytes)
      return zipped
    }
    byPath.set(path, { path, type, bytes, gzip })
    return path
  }
  const fonts = ['Regular', 'SemiBold'].map((weight) => {
    const name = `source-sans-3-${weight.toLowerCase()}.ttf`
    const bytes = readFileSync(join(root, `reports/fonts/SourceSans3-${weight}.ttf`))
    return [`/assets/${name}`, add(name, 'font/ttf', bytes)] as const
  })
  const css = styleOrder.map((name) => readFileSync(join(root, 'views/styles', name), 'utf8'))
  const style = fonts.reduce((text, [from, to]) => text.replaceAll(from, to), css.join('\n'))
  const htmxFile = createRequire(import.meta.url).resolve('htmx.org/dist/htmx.min.js')
  const scripts = addScripts(root, (name, text) => {
    return add(name, 'text/javascript', Buffer.from(text))
  })
  return {
    icon: add('icon.svg', 'image/svg+xml', readFileSync(join(root, 'views/pictures/icon.svg'))),
    style: add('ringproof.css', 'text/css', Buffer.from(style)),
    htmx: add('htmx.js', 'text/javascript', readFileSync(htmxFile)),
    script: (name) => {
      const found = scripts.find(([one]) => one === name)
      if (found === undefined) throw new RangeError(`no script views/browser/${name}`)
      return found[1]
    },
    find: (path) => byPath.get(path),
  }
}

/** The built scripts where there is a build, else the sources with their types stripped. */
function addScripts(root: string, add: (name: string, text: string) => string) {
  const built = join(root, '.build/views/browser')
  const isBuilt = import.meta.url.includes('/.build/') && existsSync(built)
  const folder = isBuilt ? built : join(root, 'views/browser')
  if (!existsSync(folder)) return []
  const ending = isBuilt ? '.js' : '.ts'
  const link = linkScripts(add, isBuilt)
  return readdirSync(folder)
    .filter((file) => file.endsWith(ending))
    .map((file) => [file.slice(0, -3), link(join(folder, file))] as const)
}
