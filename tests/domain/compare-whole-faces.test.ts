import { describe, expect, it } from 'vitest'
import { compareWholeFaces, type FaceDifference } from '../../src/domain/compare-whole-faces.ts'
import { laySurface } from '../../src/domain/lay-surface.ts'
import { turnSurface } from '../../src/science/surface/turn-surface.ts'
import { dish, madeSurface, madeWholeReading, saddle } from './made-whole-reading.ts'

const turned = { isTurned: true }
const asTaken = { isTurned: false }
const mapOf = (got: ReturnType<typeof compareWholeFaces>) => got.difference as FaceDifference

describe('two readings of one face', () => {
  const face = madeSurface(2)
  const first = madeWholeReading(1, face)
  const second = madeWholeReading(2, turnSurface(face, 77.5))

  it('differ in nothing once the second is turned back', () => {
    const got = compareWholeFaces(first, second, turned)
    expect(got.turn?.standing).toBe('found')
    // A turn that is 0.05 degrees off moves the steepest place by some 1e-3 of the height.
    expect(mapOf(got).peakToValleyUm).toBeLessThan(2e-3 * first.flatnessUm!)
    expect(mapOf(got).isWithin).toBe(true)
    const asThey = compareWholeFaces(first, second, asTaken)
    expect(mapOf(asThey).peakToValleyUm).toBeGreaterThan(0.3 * first.flatnessUm!)
  })

  it.each([3, 4, 5, 6])('agree or not in either order (seed %i)', (seed) => {
    const other = madeWholeReading(3, turnSurface(madeSurface(seed), 20), { isSignKnown: false })
    const [there, back] = [
      compareWholeFaces(first, other, turned),
      compareWholeFaces(other, first, turned),
    ]
    expect(back.agreement?.enNumber).toBe(there.agreement?.enNumber)
    expect(back.agreement?.isWithin).toBe(there.agreement?.isWithin)
    expect(back.agreement?.differenceUm).toBe(-there.agreement!.differenceUm)
    expect(back.turn?.standing).toBe(there.turn?.standing)
    expect(back.range).toEqual({
      lowUm: expect.closeTo(there.range!.lowUm, 2),
      highUm: expect.closeTo(there.range!.highUm, 2),
    })
    // On a grid of 2 degrees a turned peak is met a little otherwise.
    expect(mapOf(back).peakToValleyUm / mapOf(there).peakToValleyUm).toBeCloseTo(1, 1)
  })

  it('differ in flatness by no more than their maps do', () => {
    for (const seed of [3, 4, 5, 6, 7, 8]) {
      const got = compareWholeFaces(first, madeWholeReading(3, madeSurface(seed)), asTaken)
      const { differenceUm } = got.agreement!
      // Peak to valley is a seminorm, and both are taken on one grid.
      expect(Math.abs(differenceUm)).toBeLessThanOrEqual(mapOf(got).peakToValleyUm + 1e-12)
    }
  })

  it('agree within the root of the sum of squares of both uncertainties, and not beyond', () => {
    const known = (id: number, flatnessUm: number) => ({
      ...first,
      id,
      flatnessUm,
      uncertainty: { ...first.uncertainty!, expandedUncertainty: id === 1 ? 0.03 : 0.04 },
    })
    const within = compareWholeFaces(known(1, 0.5), known(2, 0.55), turned).agreement
    expect(within).toMatchObject({ isWithin: true })
    expect(within?.expandedUm).toBeCloseTo(0.05, 12) // 3, 4 and 5
    expect(within?.enNumber).toBeCloseTo(1, 12)
    const beyond = compareWholeFaces(known(1, 0.5), known(2, 0.551), turned).agreement
    expect(beyond?.isWithin).toBe(false)
  })

  it('have maps that differ although their flatness is the same', () => {
    const [one, other] = [madeWholeReading(1, dish), madeWholeReading(2, saddle)]
    const got = compareWholeFaces(one, other, turned)
    expect(got.agreement?.isWithin).toBe(true)
    expect(got.turn?.standing).toBe('unlike')
    expect(mapOf(got).isWithin).toBe(false)
  })

  it('are drawn on a scale that holds both', () => {
    const high = madeWholeReading(2, laySurface(saddle, { turnDeg: 10, isUpsideDown: false }))
    const { range } = compareWholeFaces(first, high, asTaken)
    expect(range?.lowUm).toBeCloseTo(-0.5, 2)
    expect(range?.highUm).toBeCloseTo(0.5, 2)
  })

  it('have changes of each figure, with an uncertainty of flatness alone', () => {
    const { changes } = compareWholeFaces(first, second, turned)
    expect(changes.map((one) => one.name)).toEqual([
      'flatness',
      'minimum-zone',
      'rms',
      'taper',
      'two-waves',
      'three-waves',
    ])
    const [flatness, ...others] = changes
    expect(flatness?.changeUm).toBeCloseTo(second.flatnessUm! - first.flatnessUm!, 12)
    expect(flatness?.expandedUm?.[2]).toBeCloseTo(
      Math.SQRT2 * first.uncertainty!.expandedUncertainty,
      3, // both have nearly the same
    )
    expect(others.every((one) => one.expandedUm === null)).toBe(true)
  })
})

describe('a face whose sign is open', () => {
  const face = madeSurface(2)
  const known = madeWholeReading(1, face)
  const open = madeWholeReading(2, laySurface(face, { turnDeg: 30, isUpsideDown: true }), {
    isSignKnown: false,
  })

  it('gives way to the one whose sign is known, whichever comes first', () => {
    for (const [one, other] of [
      [known, open],
      [open, known],
    ] as const) {
      const got = compareWholeFaces(one, other, turned)
      expect([got.first.isUpsideDown, got.second.isUpsideDown]).toEqual([
        one === open,
        other === open,
      ])
      expect(got.first.isSignKnown && got.second.isSignKnown).toBe(true)
      expect(mapOf(got).peakToValleyUm).toBeLessThan(2e-3 * known.flatnessUm!) // as above
    }
  })

  it('has no difference as it was taken', () => {
    expect(compareWholeFaces(known, open, asTaken).difference).toBe('sign-open')
  })
})

describe('what can not be laid on each other', () => {
  const face = madeWholeReading(1, madeSurface(2))

  it('is a grid of lines, which fits no surface', () => {
    const grid = { ...face, wholeFace: { ...face.wholeFace, surface: null } }
    const got = compareWholeFaces(face, grid, turned)
    expect(got).toMatchObject({ turn: null, isTurned: false, difference: 'no-surface' })
    expect(got.agreement).not.toBeNull()
    expect(got.range).not.toBeNull()
  })

  it('is a land of other diameters', () => {
    const other = madeWholeReading(2, { ...madeSurface(2), radiusRatio: 0.6 })
    expect(compareWholeFaces(face, other, turned).difference).toBe('other-land')
  })
})
