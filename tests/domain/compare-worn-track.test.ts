import { describe, expect, it } from 'vitest'
import { compareWornTrack, type FoundMovement } from '../../src/domain/compare-worn-track.ts'

const track = (movementUm: number, standardUncertaintyUm: number | null = 15) => ({
  faceKind: 'stationary-seat' as const,
  movementUm,
  standardUncertaintyUm,
})
const sleeve: FoundMovement = {
  characteristic: 'sleeve-run-out',
  totalUm: 130,
  expandedUncertaintyUm: 10,
}
const lift: FoundMovement = { ...sleeve, characteristic: 'radial-lift', totalUm: 60 }
const register: FoundMovement = {
  ...sleeve,
  characteristic: 'register-concentricity',
  totalUm: 240,
}

describe('compareWornTrack', () => {
  it('explains a track on the seat by the sleeve that carries the nose, 4.20 - 3.95 mm', () => {
    expect(compareWornTrack(track(250), [sleeve])).toMatchObject({
      verdict: 'wider',
      found: { leastUm: 130, mostUm: 130 },
    })
    expect(compareWornTrack(track(140), [sleeve]).verdict).toBe('agrees')
  })

  it('explains a track on the rotating face by the register that holds the nose', () => {
    const turning = { ...track(250), faceKind: 'rotating-face' as const }
    expect(compareWornTrack(turning, [sleeve, register])).toMatchObject({
      verdict: 'agrees',
      counted: [{ characteristic: 'register-concentricity' }],
    })
    expect(compareWornTrack(turning, [sleeve]).verdict).toBe('not-surveyed')
  })

  it('takes the shaft where no sleeve was swept, and the sleeve where both were', () => {
    const shaft = { ...sleeve, characteristic: 'shaft-run-out', totalUm: 40 } as const
    expect(compareWornTrack(track(40), [shaft]).counted).toEqual([shaft])
    expect(compareWornTrack(track(40), [shaft, sleeve]).counted).toEqual([sleeve])
  })

  it('lets a lift in the bearings add, and not make up for what is missing', () => {
    const { verdict, found } = compareWornTrack(track(185), [sleeve, lift])
    expect(found).toEqual({ leastUm: 130, mostUm: 190 })
    expect(verdict).toBe('agrees')
    expect(compareWornTrack(track(60), [sleeve, lift]).verdict).toBe('narrower')
  })

  it('forgives what the uncertainties of both allow, and nothing where none is known', () => {
    // 2 x 15 and 10: 31.6.
    expect(compareWornTrack(track(160), [sleeve]).allowanceUm).toBeCloseTo(Math.hypot(30, 10), 12)
    expect(compareWornTrack(track(161), [sleeve]).verdict).toBe('agrees')
    expect(compareWornTrack(track(162), [sleeve]).verdict).toBe('wider')
    const unknown = { ...sleeve, expandedUncertaintyUm: null }
    expect(compareWornTrack(track(131, null), [unknown])).toMatchObject({
      verdict: 'wider',
      allowanceUm: null,
    })
  })

  it('calls a track no wider than the nose no movement', () => {
    expect(compareWornTrack(track(-20), []).verdict).toBe('no-movement')
    expect(compareWornTrack(track(-200), [sleeve]).verdict).toBe('no-movement')
  })
})
