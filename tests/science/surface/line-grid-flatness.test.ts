import { describe, expect, it } from 'vitest'
import {
  type GridCrossing,
  lineGridFlatness,
} from '../../../src/science/surface/line-grid-flatness.ts'

const wavelengthNm = 587.5618

/** Crossings over a ring of outer radius 1, both edges among them, of a form in bands. */
function ring(form: (r: number, angle: number) => number, inner = 0.5): GridCrossing[] {
  const crossings: GridCrossing[] = []
  for (const r of [inner, (inner + 1) / 2, 1]) {
    for (let step = 0; step < 24; step += 1) {
      const angle = (step * Math.PI) / 12
      const [x, y] = [r * Math.cos(angle), r * Math.sin(angle)]
      crossings.push({ x, y, departureBands: form(r, angle) })
    }
  }
  return crossings
}

const of = (form: (r: number, angle: number) => number, inner?: number) =>
  lineGridFlatness({ crossings: ring(form, inner), wavelengthNm })

describe('lineGridFlatness', () => {
  it('gives a sphere over a ring its closed form, c (1 - eps^2)', () => {
    expect(of((r) => 2 * r * r, 0.5).bands).toBeCloseTo(1.5, 12) // rounding alone
    expect(of((r) => -3 * r * r, 0.8).bands).toBeCloseTo(1.08, 12)
  })

  it('gives a cone its closed form, s (1 - eps)', () => {
    expect(of((r) => 2 * r, 0.6).bands).toBeCloseTo(0.8, 12) // rounding alone
  })

  it('sees all of a saddle, which a line count does not', () => {
    const saddle = (r: number, angle: number) => 0.75 * r * r * Math.cos(2 * angle)
    expect(of(saddle).bands).toBeCloseTo(1.5, 12) // highs at 0 and 180 degrees are crossings
    expect(of(saddle, 0.9).bands).toBeCloseTo(1.5, 12)
  })

  it('sees three lobes', () => {
    expect(of((r, angle) => 0.5 * r ** 3 * Math.cos(3 * angle)).bands).toBeCloseTo(1, 12) // rounding
  })

  it('does not mind how the hand laid the grid', () => {
    const saddle = (r: number, angle: number) => 0.75 * r * r * Math.cos(2 * angle)
    const askew = of(
      (r, angle) => saddle(r, angle) + 0.4 * r * Math.cos(angle) - 0.7 * r * Math.sin(angle) + 2,
    )
    expect(askew.bands).toBeCloseTo(1.5, 12) // the plane drops out but for rounding
    expect(askew.asLaidBands).toBeGreaterThan(2)
  })

  it('is zero for straight bands and grows in step with the departures', () => {
    expect(of(() => 0).bands).toBe(0)
    const wave = (r: number, angle: number) => r * Math.cos(2 * angle)
    const once = of(wave).bands
    expect(of((r, angle) => 3 * wave(r, angle)).bands).toBeCloseTo(3 * once, 12) // rounding alone
  })

  it('turns bands into height by the lamp and the angle, and says what it sees', () => {
    const seen = of((r) => 2 * r * r)
    // 1.5 bands of 0.2937809 um, helium from a table of spectral lines
    expect(seen.flatnessUm).toBeCloseTo(0.440671, 6) // printed digits
    expect(seen.flatnessUin).toBeCloseTo(seen.flatnessUm / 0.0254, 9) // 1 in = 25.4 mm, rounding
    expect(seen.sees).toBe('whole-surface')
    const crossings = ring((r) => 2 * r * r)
    const oblique = lineGridFlatness({ crossings, wavelengthNm, viewingAngleDeg: 60 })
    expect(oblique.flatnessUm).toBeCloseTo(2 * seen.flatnessUm, 12) // 1 / cos 60 degrees = 2
  })

  it('refuses too few crossings, and all of them on one line', () => {
    const few = ring(() => 0).slice(0, 5)
    expect(() => lineGridFlatness({ crossings: few, wavelengthNm })).toThrow(
      'lineGridFlatness requires count of crossings from 6 to 10000, got 5',
    )
    const line = [0, 1, 2, 3, 4, 5, 6].map((x) => ({ x, y: 2 * x, departureBands: x % 2 }))
    expect(() => lineGridFlatness({ crossings: line, wavelengthNm })).toThrow(
      'spread of crossings in two directions',
    )
    const same = line.map((one) => ({ ...one, x: 1, y: 1 }))
    expect(() => lineGridFlatness({ crossings: same, wavelengthNm })).toThrow(RangeError)
    expect(() => of(() => Number.NaN)).toThrow(RangeError)
    expect(() => of(() => 1001)).toThrow(RangeError)
  })
})
