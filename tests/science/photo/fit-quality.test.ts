import { describe, expect, it } from 'vitest'
import { bandTables } from '../../../src/science/photo/band-tables.ts'
import { fitQuality } from '../../../src/science/photo/fit-quality.ts'
import { landCells } from '../../../src/science/photo/land-cells.ts'
import { bandLand } from './band-land.ts'

const gap = (x: number, y: number) => 5 * x + 2 * y
const { samples, relative } = bandLand({ radiusRatio: 0.6, wanted: 5000, gap, noise: 0.02 })
const model = {
  gap: Float64Array.from([0, 5, 2]),
  background: new Float64Array(1),
  swing: Float64Array.from([0.5, 0, 0, 0, 0, 0]),
  second: 0,
}
const land = landCells(samples, { from: 0.6, to: 1 })
const qualityOf = (light: Float64Array, isUsable = (_: number) => true) => {
  const indexes = Array.from(light, (_, i) => i).filter(isUsable)
  const tables = bandTables(samples, light, { radiusRatio: 0.6, level: 1, indexes })
  return fitQuality(tables, model, { land, indexes })
}
/** A sector of a twelfth of the land, to the right and upwards. */
const isThere = (i: number) => {
  const turn = Math.atan2(samples.ys[i] ?? 0, samples.xs[i] ?? 0)
  return turn >= 0 && turn < Math.PI / 6
}

describe('fitQuality', () => {
  it('explains a land by its own model, and measures the noise', () => {
    const quality = qualityOf(relative)
    expect(quality.explained).toBeGreaterThan(0.99)
    expect(quality.explainedShare).toBe(1)
    expect(quality.edgeShare).toBe(1)
    expect(quality.usableShare).toBe(1)
    expect(quality.doubtfulSectors).toEqual([])
    expect(quality.doubtfulInRow).toBe(0)
    // The median of 5000 numbers is good to about 2 %.
    expect(quality.spread / 0.02).toBeCloseTo(1, 1)
  })

  it('names the sectors in which the bands are not those of the model', () => {
    const wrong = relative.map((value, i) => (isThere(i) ? -value : value))
    const quality = qualityOf(wrong)
    expect(quality.doubtfulSectors).toEqual([0, 1, 2])
    expect(quality.doubtfulInRow).toBe(3)
    expect(quality.explainedShare).toBeCloseTo(11 / 12, 10) // 3 of 36 sectors
    expect(quality.usableShare).toBe(1)
  })

  it('takes a part for hidden where bands are covered, under glare, or unusable', () => {
    const covered = qualityOf(relative.map((value, i) => (isThere(i) ? -0.6 : value)))
    const glare = qualityOf(relative.map((value, i) => (isThere(i) ? value + 2 : value)))
    const unusable = qualityOf(relative, (i) => !isThere(i))
    for (const quality of [covered, glare, unusable]) {
      expect(quality.usableShare).toBeCloseTo(11 / 12, 10)
      expect(quality.explainedShare).toBe(1)
    }
  })
})
