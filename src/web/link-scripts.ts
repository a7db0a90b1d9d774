import { readFileSync } from 'node:fs'
import { stripTypeScriptTypes } from 'node:module'
import { basename, dirname, join } from 'node:path'

/** Of what the sources and the build both write. Types are gone by then. */
const importPattern = /^(import\b[^'"\n]*|import\b[^'"]*\}\s*from\s*)(['"])([^'"]+)\2/gm

/**
 * Gives scripts their addresses, each with all that it imports: the address of an imported file
 * stands in place of its path, so that a hash changes with everything behind it. Pages may so
 * share the geometry of `src/plots`, and need no bundler.
 * @param add takes a name and a text, and answers the address where it is served
 * @param isBuilt whether the files are JavaScript already
 * @returns the address of a file, by its path
 */
export function linkScripts(
  add: (name: string, text: string) => string,
  isBuilt: boolean,
): (file: string) => string {
  const known = new Map<string, string>()
  const link = (file: string): string => {
    const found = known.get(file)
    if (found !== undefined) return found
    const source = readFileSync(file, 'utf8')
    const script = isBuilt ? source : stripTypeScriptTypes(source)
    const text = script.replace(importPattern, (_, start: string, quote: string, path: string) => {
      if (!path.startsWith('.')) throw new RangeError(`${file} imports ${path}: no browser has it`)
      return `${start}${quote}${link(join(dirname(file), path))}${quote}`
    })
    const address = add(`${basename(file).replace(/\.[jt]s$/, '')}.js`, text)
    known.set(file, address)
    return address
  }
  return link
}
