import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { styleOrder } from '../../../views/styles/order.ts'

const folder = new URL('../../../views/styles/', import.meta.url)
const read = (name: string): string => readFileSync(new URL(name, folder), 'utf8')
const components = new URL('../../../views/components/', import.meta.url)

describe('style files', () => {
  it('are all joined, each once, tokens first and print last', () => {
    const files = readdirSync(folder).filter((name) => name.endsWith('.css'))
    expect(files.length).toBeGreaterThan(5)
    expect([...styleOrder].sort()).toEqual(files.sort())
    expect(styleOrder[0]).toBe('tokens.css')
    expect(styleOrder.at(-1)).toBe('print.css')
  })

  it('name colours in tokens and for paper only', () => {
    for (const name of styleOrder) {
      if (name === 'tokens.css' || name === 'print.css') continue
      const colours = read(name).match(/#[0-9a-f]{3,8}\b|\b(?:rgb|hsl|oklch|lab)a?\(/gi)
      expect([name, colours]).toEqual([name, null])
    }
  })

  it('fetch nothing but the two fonts of the app', () => {
    const urls = styleOrder.flatMap((name) => [...read(name).matchAll(/url\("([^"]+)"\)/g)])
    expect(urls.map((match) => match[1])).toEqual([
      '/assets/source-sans-3-regular.ttf',
      '/assets/source-sans-3-semibold.ttf',
    ])
    for (const name of styleOrder) expect(read(name)).not.toContain('@import')
  })

  it('use no token that does not exist', () => {
    const known = new Set(
      styleOrder.flatMap((name) => [...read(name).matchAll(/(--[a-z-]+):/g)].map((m) => m[1])),
    )
    const used = styleOrder.flatMap((name) =>
      [...read(name).matchAll(/var\((--[a-z-]+)\)/g)].map((m) => m[1]),
    )
    expect(used.length).toBeGreaterThan(100)
    for (const token of used) expect(known).toContain(token)
  })

  it('move nothing for who asked for less motion', () => {
    for (const name of styleOrder) {
      const css = read(name)
      const moving = css.search(/\b(?:animation|transition):/)
      if (moving < 0) continue
      expect(css.lastIndexOf('prefers-reduced-motion: no-preference', moving)).toBeGreaterThan(0)
    }
  })

  it('know every class that a component writes', () => {
    const css = styleOrder.map(read).join('\n')
    // Names of families whose members are styled, without a rule of their own.
    const families = ['button-plain', 'view-switcher', 'choice-words']
    const missing: string[] = []
    let checked = 0
    for (const file of readdirSync(components).filter((name) => name.endsWith('.tsx'))) {
      const source = readFileSync(new URL(file, components), 'utf8')
      for (const [, value = ''] of source.matchAll(/class="([^"]+)"/g)) {
        for (const word of value.split(' ')) {
          checked += 1
          const isKnown = new RegExp(`\\.${word}(?![a-z-])`).test(css)
          if (!isKnown && !families.includes(word)) missing.push(`${file}: ${word}`)
        }
      }
    }
    expect(missing).toEqual([])
    expect(checked).toBeGreaterThan(40)
  })
})
