import { expect, it } from 'vitest'
import { planeImage } from '../../../src/science/photo/plane-image.ts'
import { bandLand } from './band-land.ts'

it('planeImage puts every sample into the cell that it lies in, by means', () => {
  const { samples } = bandLand({ radiusRatio: 0.6, wanted: 20_000, gap: () => 0 })
  // Relative light that names its own place: the mean in a cell is near the middle of the cell.
  const relative = samples.xs.map((x, i) => x + 10 * (samples.ys[i] ?? 0))
  const image = planeImage(samples, relative, 64)
  let filledCount = 0
  image.values.forEach((value, at) => {
    if (value === 0) return
    filledCount++
    const x = ((at % 64) + 0.5) * image.pitch - 1.4
    const y = (Math.floor(at / 64) + 0.5) * image.pitch - 1.4
    // Half a cell in x and in y.
    expect(Math.abs(value - x - 10 * y)).toBeLessThan(11 * 0.5 * image.pitch)
  })
  // The land has the area 2.01, a cell 0.0438 squared; cells at its borders are filled too.
  expect(filledCount).toBeGreaterThan(1000)
  expect(filledCount).toBeLessThan(1400)
})

it('planeImage leaves out what can not be used', () => {
  const { samples, relative } = bandLand({ radiusRatio: 0.6, wanted: 500, gap: () => 0 })
  const none = { ...samples, isUsable: new Uint8Array(samples.xs.length) }
  expect(planeImage(none, relative, 32).values.every((value) => value === 0)).toBe(true)
})
