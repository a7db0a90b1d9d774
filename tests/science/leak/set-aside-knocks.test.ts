import { describe, expect, it } from 'vitest'
import { setAsideKnocks } from '../../../src/science/leak/set-aside-knocks.ts'
import { seededNormal } from '../seeded-random.ts'

const of = (count: number, massOf: (i: number) => number) =>
  Array.from({ length: count }, (_, i) => ({ timeS: 60 * i, massG: massOf(i) }))

describe('readings that lie far off', () => {
  it('are set aside one by one, and every reading is in one of both lists', () => {
    const normal = seededNormal(2)
    const readings = of(60, (i) => 0.1 * i + 0.01 * normal() + ([9, 31].includes(i) ? 3 : 0))
    const { kept, setAside } = setAsideKnocks(readings, 0.01)
    expect(setAside.map((one) => one.timeS)).toEqual([540, 1860])
    expect(kept).toHaveLength(58)
    expect([...kept, ...setAside].sort((a, b) => a.timeS - b.timeS)).toEqual(readings)
  })

  it('are none where noise, a run-in or the step of the display makes the scatter', () => {
    const normal = seededNormal(3)
    let count = 0
    for (let trial = 0; trial < 200; trial++) {
      const noisy = of(60, (i) => 0.1 * i + 5 * Math.exp(-i / 8) + 0.02 * normal())
      count += setAsideKnocks(noisy, 0.001).setAside.length
    }
    expect(count).toBe(0)
    const coarse = of(60, (i) => Math.round(0.0016 * 60 * i * 10) / 10)
    expect(setAsideKnocks(coarse, 0.1).setAside).toEqual([])
  })

  it('are not looked for among a few, and a step that stays is left', () => {
    expect(
      setAsideKnocks(
        of(6, (i) => (i === 3 ? 9 : i)),
        0,
      ).setAside,
    ).toEqual([])
    const exchanged = of(40, (i) => i + (i >= 20 ? -15 : 0))
    expect(setAsideKnocks(exchanged, 0.01).setAside).toEqual([])
    expect(() => setAsideKnocks(of(10, Number), -1)).toThrow('stepG')
  })
})
