import { expect, it } from 'vitest'
import { bandTables } from '../../../src/science/photo/band-tables.ts'
import { bandLand } from './band-land.ts'

const { samples, relative } = bandLand({ radiusRatio: 0.7, wanted: 100, gap: (x) => 2 * x })

it('bandTables holds a constant, the plane and the light of the samples that were asked for', () => {
  const indexes = [3, 17, 40]
  const tables = bandTables(samples, relative, { radiusRatio: 0.7, level: 2, indexes })
  expect(tables.count).toBe(3)
  expect(tables.termCount).toBe(16)
  indexes.forEach((index, i) => {
    expect(tables.phi[i * 16]).toBe(1)
    expect(tables.phi[i * 16 + 1]).toBeCloseTo(samples.xs[index] ?? 9, 14) // r cos, rounding
    expect(tables.phi[i * 16 + 2]).toBeCloseTo(samples.ys[index] ?? 9, 14)
    expect(tables.quadratic[i * 6 + 1]).toBe(samples.xs[index])
    expect(tables.relative[i]).toBe(relative[index])
  })
})

it('bandTables refuses a level that there is not', () => {
  const options = { radiusRatio: 0.7, level: 5, indexes: [0] }
  expect(() => bandTables(samples, relative, options)).toThrow('level')
})
