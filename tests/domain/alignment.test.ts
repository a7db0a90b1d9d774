import { describe, expect, it } from 'vitest'
import { type AlignmentSurvey, alignment } from '../../src/domain/alignment.ts'

const register: AlignmentSurvey = {
  measuredValueId: 1,
  characteristic: 'register-concentricity',
  surface: 'inside',
  isClockwise: true,
  totalUm: 134,
  eccentricityUm: 65,
  directionDeg: 30,
  roundnessUm: 9,
  sweptDiameterMm: 120,
}
const shaft: AlignmentSurvey = {
  ...register,
  measuredValueId: 2,
  characteristic: 'shaft-run-out',
  surface: 'outside',
  totalUm: 20,
  eccentricityUm: 10,
  directionDeg: 0,
  roundnessUm: 2,
}
const face: AlignmentSurvey = {
  ...register,
  measuredValueId: 3,
  characteristic: 'chamber-face-squareness',
  surface: 'face',
  totalUm: 84,
  eccentricityUm: 40,
  directionDeg: 100,
  roundnessUm: 6,
  sweptDiameterMm: 140,
}

describe('alignment', () => {
  it('lays a bore off the other way from where it reads highest, and moves it back there', () => {
    const { register: place, moves } = alignment([register])
    expect(place).toEqual({ amountUm: 65, clockDeg: 210 })
    expect(moves).toEqual([
      {
        kind: 'move',
        characteristic: 'register-concentricity',
        measuredValueId: 1,
        amountUm: 65,
        clockDeg: 30,
        atDiameterMm: null,
        totalNowUm: 134,
        totalAfterUm: 9,
      },
    ])
  })

  it('shims a face where it is lowest, by twice its amplitude over the swept circle', () => {
    const { chamberFace, moves } = alignment([face])
    expect(chamberFace).toEqual({ amountUm: 80, clockDeg: 100 })
    expect(moves[0]).toMatchObject({
      kind: 'shim',
      amountUm: 80,
      clockDeg: 280,
      atDiameterMm: 140,
      totalAfterUm: 6,
    })
  })

  it('counts angles that rise against the clock the other way', () => {
    const { chamberFace } = alignment([{ ...face, isClockwise: false }])
    expect(chamberFace?.clockDeg).toBe(260)
  })

  it('says where a shaft stands out: no housing can follow it', () => {
    expect(alignment([shaft]).moves).toMatchObject([
      { kind: 'straighten', clockDeg: 0, amountUm: 10 },
    ])
  })

  it('turns a sleeve so that its own offset works against that of the shaft', () => {
    // Its own 12 um at 0 lie on top of 10 um of the shaft at 0: opposite, 2 um are left.
    const sleeve = { ...shaft, measuredValueId: 4, characteristic: 'sleeve-run-out' } as const
    const fitted = { ...sleeve, totalUm: 45, eccentricityUm: 22 }
    const turn = alignment([shaft, fitted]).moves.find((one) => one.kind === 'turn-sleeve')
    expect(turn?.clockDeg).toBeCloseTo(180, 9)
    // 2 x 2 um and the 2 um of lobes.
    expect(turn?.totalAfterUm).toBeCloseTo(6, 9)
  })

  it('leaves a sleeve alone that lies best already', () => {
    const sleeve = { ...shaft, characteristic: 'sleeve-run-out', measuredValueId: 4 } as const
    const best = { ...sleeve, totalUm: 4, eccentricityUm: 2, directionDeg: 180 }
    const { moves } = alignment([shaft, best])
    expect(moves.some((one) => one.kind === 'turn-sleeve')).toBe(false)
  })

  it('moves nothing where the direction means nothing, and says so', () => {
    const unsure = { ...register, directionDeg: null }
    const { moves, register: place, withoutDirection } = alignment([unsure])
    expect(moves).toEqual([])
    expect(place).toBeNull()
    expect(withoutDirection).toEqual(['register-concentricity'])
  })

  it('finds nothing to move in a float or a lift', () => {
    const play = { ...register, characteristic: 'end-play', directionDeg: null } as const
    expect(alignment([play])).toMatchObject({ moves: [], withoutDirection: [] })
  })

  it('never expects more than there is now', () => {
    const lobed = { ...register, totalUm: 10, roundnessUm: 12 }
    expect(alignment([lobed]).moves[0]?.totalAfterUm).toBe(10)
  })
})
