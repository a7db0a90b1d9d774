import { describe, expect, it } from 'vitest'
import { fitEllipse } from '../../../src/science/photo/fit-ellipse.ts'
import { placesOn } from './paint-ring.ts'

describe('fitEllipse', () => {
  it.each([
    { cx: 600, cy: 450, rx: 380, ry: 370, rotationDeg: 30 },
    { cx: 100, cy: 90, rx: 50, ry: 30, rotationDeg: -70 },
    { cx: 0, cy: 0, rx: 1, ry: 0.99, rotationDeg: 0 },
  ])('gives back the ellipse that the places lie on: %o', (ellipse) => {
    const fit = fitEllipse(placesOn(ellipse, 9))
    // Places are exact, so only rounding is left, of a system whose condition is below 1e3.
    const size = ellipse.rx * 1e-11
    expect(Math.abs((fit?.cx ?? 0) - ellipse.cx)).toBeLessThan(size)
    expect(Math.abs((fit?.cy ?? 0) - ellipse.cy)).toBeLessThan(size)
    expect(Math.abs((fit?.rx ?? 0) - ellipse.rx)).toBeLessThan(size)
    expect(Math.abs((fit?.ry ?? 0) - ellipse.ry)).toBeLessThan(size)
    // Half a turn is the same ellipse; the angle of a nearly round one is worth fewer digits.
    const off = ((((fit?.rotationDeg ?? 0) - ellipse.rotationDeg) % 180) + 270) % 180
    expect(Math.abs(off - 90)).toBeLessThan(1e-7)
  })

  it('gives the circle through six places of it, by Pythagoras', () => {
    // 3-4-5 triangles: all on the circle of radius 5 about (1, 2).
    const around = [
      [6, 2],
      [-4, 2],
      [1, 7],
      [1, -3],
      [4, 6],
      [5, -1],
    ] as const
    const fit = fitEllipse(around)
    expect(fit?.rx).toBeCloseTo(5, 10) // rounding of a small system
    expect(fit?.ry).toBeCloseTo(5, 10)
    expect(fit?.cx).toBeCloseTo(1, 10)
    expect(fit?.cy).toBeCloseTo(2, 10)
  })

  it('finds nothing on a line, in one place, or on a hyperbola', () => {
    const line = Array.from({ length: 8 }, (_, i) => [i, 2 * i + 1] as const)
    expect(fitEllipse(line)).toBeNull()
    expect(fitEllipse(Array(6).fill([3, 3]))).toBeNull()
    const hyperbola = [1, 1.5, 2, 2.5, 3, 4, 5].map((x) => [x, 1 / x] as const)
    expect(fitEllipse(hyperbola)).toBeNull()
  })

  it('refuses five places and places that are no numbers', () => {
    const five = placesOn({ cx: 0, cy: 0, rx: 5, ry: 5, rotationDeg: 0 }, 5)
    expect(() => fitEllipse(five)).toThrow('fitEllipse requires point count')
    expect(() => fitEllipse([...five, [Number.NaN, 0]])).toThrow('fitEllipse requires x')
  })
})
