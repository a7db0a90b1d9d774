import { expect, it } from 'vitest'
import { fitCentreLine } from '../../../src/science/runout/fit-centre-line.ts'

const centres = [0, 50, 120, 300].map((positionMm) => ({
  positionMm,
  xUm: 5 - 0.1 * positionMm,
  yUm: 2 + 0.3 * positionMm,
}))

it('finds the line on which all centres lie, with any weights', () => {
  for (const weights of [
    [1, 1, 1, 1],
    [0.1, 3, 0, 2],
  ]) {
    const line = fitCentreLine(centres, weights)
    expect(line.xUm).toBeCloseTo(5, 9)
    expect(line.xSlopeUmPerMm).toBeCloseTo(-0.1, 11)
    expect(line.ySlopeUmPerMm).toBeCloseTo(0.3, 11)
    for (const { xUm, yUm } of line.departuresUm) expect(Math.hypot(xUm, yUm)).toBeLessThan(1e-9)
  }
})

it('refuses centres that are all at one position', () => {
  const [first] = centres
  if (first === undefined) throw new Error('no centre')
  expect(() => fitCentreLine([first, first], [1, 1])).toThrow('different positions')
})
