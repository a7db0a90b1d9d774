import { describe, expect, it } from 'vitest'
import { sleeveOnShaft } from '../../../src/science/runout/sleeve-on-shaft.ts'

const at = (amountUm: number, clockDeg: number) => ({ amountUm, clockDeg })

/** Where the sleeve's axis lies once it was turned on its shaft. */
function afterTurning(shaft: ReturnType<typeof at>, sleeve: ReturnType<typeof at>, deg: number) {
  const [s, t] = [shaft, sleeve].map(({ amountUm, clockDeg }) => {
    const angle = (clockDeg * Math.PI) / 180
    return { x: amountUm * Math.cos(angle), y: amountUm * Math.sin(angle) }
  }) as [{ x: number; y: number }, { x: number; y: number }]
  const own = { x: t.x - s.x, y: t.y - s.y }
  const [c, n] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)]
  return Math.hypot(s.x + c * own.x - n * own.y, s.y + n * own.x + c * own.y)
}

describe('sleeveOnShaft', () => {
  it.each([
    [at(10, 0), at(22, 0)],
    [at(10, 40), at(15, 200)],
    [at(30, 120), at(5, 350)],
    [at(0, 0), at(12, 77)],
  ])('finds the least offset that any turn gives: %j under %j', (shaft, sleeve) => {
    const best = sleeveOnShaft({ shaft, sleeve })
    const tried = Array.from({ length: 3600 }, (_, i) => afterTurning(shaft, sleeve, i / 10))
    // A tenth of a degree changes an offset of 50 um by less than 0.1 um.
    expect(best.offsetUm).toBeLessThanOrEqual(Math.min(...tried) + 1e-9)
    expect(Math.min(...tried) - best.offsetUm).toBeLessThan(0.1)
    // The turn it names gives what it promises; rounding of sines alone.
    expect(afterTurning(shaft, sleeve, best.turnDeg)).toBeCloseTo(best.offsetUm, 9)
  })

  it('refuses what is no place', () => {
    expect(() => sleeveOnShaft({ shaft: at(-1, 0), sleeve: at(1, 0) })).toThrow('amountUm')
    expect(() => sleeveOnShaft({ shaft: at(1, Number.NaN), sleeve: at(1, 0) })).toThrow('clockDeg')
  })
})
