import { describe, expect, it } from 'vitest'
import { certifiedWholeFace } from '../../src/domain/certified-whole-face.ts'
import { mapOfWholeFace } from '../../src/domain/map-of-whole-face.ts'
import { taperSizeUm } from '../../src/domain/taper-size-um.ts'
import { toldMap } from '../../src/domain/told-map.ts'
import { unexplainedShare } from '../../src/domain/unexplained-share.ts'
import { peakAndValley } from '../../src/science/surface/peak-and-valley.ts'
import { buildLineGrid } from '../support/build-line-grid.ts'
import { buildWholeFace } from '../support/build-whole-face.ts'
import { dish, madeSurface, madeWholeReading } from './made-whole-reading.ts'

const lineGrid = buildLineGrid()

describe('the map of a whole face', () => {
  it('is as high as its flatness, in mm across', () => {
    const { wholeFace, flatnessUm } = madeWholeReading(1, madeSurface(7))
    const map = mapOfWholeFace(wholeFace)
    if (map === null || flatnessUm === null) throw new Error('nothing was fitted')
    // The same computation twice: equal, not close.
    expect(peakAndValley(map).peakToValley).toBe(flatnessUm)
    expect([map.radii[0], map.radii.at(-1)]).toEqual([22.5, 30])
    expect(mapOfWholeFace(lineGrid)).toBeNull()
  })

  it('is told in figures that belong to it', () => {
    const { wholeFace } = madeWholeReading(1, dish)
    const map = mapOfWholeFace(wholeFace)
    if (map === null) throw new Error('nothing was fitted')
    const told = toldMap(map)
    // A dish of 1 um rises from the inner edge to the outer, and its area-weighted mean is 0.
    expect(told.meanUm.outer - told.meanUm.inner).toBeCloseTo(1, 9)
    expect(told.highest.heightUm).toBeCloseTo(told.around.outer.highestUm, 12)
    expect(told.lowest.heightUm).toBeCloseTo(told.around.inner.lowestUm, 12)
  })
})

describe('what a certificate carries of a whole face', () => {
  it('prints its figures and keeps the surface as it is', () => {
    const { wholeFace } = madeWholeReading(1, dish)
    const certified = certifiedWholeFace(wholeFace)
    expect(certified.surface).toBe(wholeFace.surface)
    expect(certified.taperUm?.text).toBe('1.000')
    expect(certified).not.toHaveProperty('taperSizeUm')
    expect(certified.seenPercent?.text).toBe('90')
    expect(certified.hasPhotograph).toBe(true)
  })

  it('gives a taper of unknown direction its size, never a sign', () => {
    const { wholeFace } = madeWholeReading(1, dish, { isSignKnown: false })
    const certified = certifiedWholeFace(wholeFace)
    expect(certified.taperUm).toBeNull()
    expect(certified.taperSizeUm?.text).toBe('1.000')
    const turned = { ...dish, coefficients: dish.coefficients.map((one) => -one) }
    expect(taperSizeUm({ ...wholeFace, surface: turned })).toBeCloseTo(1, 12)
  })

  it('carries what was read with a grid of lines, and no map', () => {
    const certified = certifiedWholeFace(lineGrid)
    expect(certified.lineGridBands).toEqual({
      oneWay: { value: 1.25, text: '1.25' },
      otherWay: { value: 0.5, text: '0.50' },
    })
    expect(certified.surface).toBeNull()
    expect(certified).not.toHaveProperty('taperSizeUm')
    expect(certified).not.toHaveProperty('seenPercent')
  })

  it('survives JSON, as records are stored', () => {
    for (const one of [lineGrid, buildWholeFace(), madeWholeReading(1, dish).wholeFace]) {
      const certified = certifiedWholeFace(one)
      expect(JSON.parse(JSON.stringify(certified))).toEqual(certified)
    }
  })
})

describe('unexplainedShare', () => {
  const map = { ringCount: 1, sectorCount: 5, from: 0.8, to: 1 }

  it('counts what differs by the least or more, of what was seen', () => {
    expect(unexplainedShare({ ...map, shares: [0.05, -0.2, 0.01, 0, null] }, 0.05)).toBe(0.5)
  })

  it('is 0 where nothing was seen', () => {
    expect(unexplainedShare({ ...map, shares: [null, null, null, null, null] }, 0.05)).toBe(0)
  })
})
