import { encode } from 'uqr'
import { describe, expect, it } from 'vitest'
import { qrPath } from '../../../reports/paper/qr-path.ts'

describe('the path of a QR code', () => {
  it('covers exactly the dark modules, each once', () => {
    const text = 'https://ringproof.example/verify/C-2026-0042-K7QX3M'
    const { d, sizeModules } = qrPath(text)
    const covered = new Set<string>()
    let count = 0
    for (const [, x, y, right] of d.matchAll(/M(\d+) (\d+)L(\d+) /g)) {
      for (let at = Number(x); at < Number(right); at += 1) {
        covered.add(`${at} ${y}`)
        count += 1
      }
    }
    const { data, size } = encode(text, { ecc: 'M', border: 4 })
    const dark = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`${x} ${y}`] : [])))
    expect(sizeModules).toBe(size)
    expect(dark.length).toBeGreaterThan(200)
    expect([...covered].sort()).toEqual(dark.sort())
    expect(count).toBe(dark.length)
  })

  it('keeps four modules of white around it, as ISO/IEC 18004 asks', () => {
    const { d, sizeModules } = qrPath('x')
    const xs = [...d.matchAll(/[ML](\d+) /g)].map((one) => Number(one[1]))
    expect(Math.min(...xs)).toBe(4)
    expect(Math.max(...xs)).toBe(sizeModules - 4)
  })
})
