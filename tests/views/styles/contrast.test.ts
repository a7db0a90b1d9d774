import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const css = readFileSync(new URL('../../../views/styles/tokens.css', import.meta.url), 'utf8')

/** The colours that a rule of tokens.css sets, by token name. */
function coloursOf(selector: string): Map<string, string> {
  const start = css.indexOf(`${selector} {`)
  if (start < 0) throw new Error(`no rule ${selector} in tokens.css`)
  const body = css.slice(css.indexOf('{', start) + 1, css.indexOf('}', start))
  return new Map(
    [...body.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6});/g)].map((match) => [match[1]!, match[2]!]),
  )
}

const views = new Map([
  ['light', coloursOf(':root')],
  ['dark', coloursOf(':root[data-view="dark"]')],
  ['lamp', coloursOf(':root[data-view="lamp"]')],
])

/** WCAG 2.2, "relative luminance". */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

/** WCAG 2.2, "contrast ratio". */
function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x)
  return (high + 0.05) / (low + 0.05)
}

const grounds = ['paper', 'sheet', 'sunk', 'wash']
const words: readonly (readonly [string, string])[] = [
  ...['ink', 'soft', 'accent'].flatMap((text) => grounds.map((ground) => [text, ground] as const)),
  ['on-accent', 'accent'],
  ['on-block', 'block'],
]
const controls: readonly (readonly [string, string])[] = [
  ...['edge', 'accent', 'focus'].flatMap((line) =>
    ['paper', 'sheet', 'sunk'].map((ground) => [line, ground] as const),
  ),
  ['dark', 'bright'],
]

describe.each([...views])('the %s view', (view, colours) => {
  const colour = (token: string): string => {
    const hex = colours.get(token)
    if (!hex) throw new Error(`no token ${token} in the ${view} view`)
    return hex
  }

  it.each(words)('prints %s on %s with enough contrast to read', (text, ground) => {
    // WCAG 2.2, 1.4.3: 4.5 to 1; in the lamp view 1.4.6: 7 to 1.
    expect(contrast(colour(text), colour(ground))).toBeGreaterThanOrEqual(view === 'lamp' ? 7 : 4.5)
  })

  it.each(controls)('draws %s on %s with enough contrast to find', (line, ground) => {
    expect(contrast(colour(line), colour(ground))).toBeGreaterThanOrEqual(3) // WCAG 2.2, 1.4.11
  })

  it('sets every colour of the light view', () => {
    expect([...colours.keys()].sort()).toEqual([...views.get('light')!.keys()].sort())
    expect(colours.size).toBeGreaterThan(15)
  })
})

describe('tokens', () => {
  it('uses pure greys alone in the lamp view', () => {
    for (const [token, hex] of views.get('lamp')!) {
      expect([token, hex.slice(1, 3), hex.slice(3, 5)]).toEqual([
        token,
        hex.slice(3, 5),
        hex.slice(5),
      ])
    }
  })

  it('gives the device that prefers dark the same colours as the dark view', () => {
    expect(coloursOf(':root:not([data-view])')).toEqual(views.get('dark'))
  })

  it('computes the contrast that the standard gives for black on white and grey', () => {
    expect(contrast('#000000', '#ffffff')).toBe(21)
    expect(contrast('#ffffff', '#767676')).toBeCloseTo(4.54, 2) // the well-known darkest pass
  })
})
