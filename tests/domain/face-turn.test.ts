import { describe, expect, it } from 'vitest'
import { faceTurn } from '../../src/domain/face-turn.ts'
import { laySurface } from '../../src/domain/lay-surface.ts'
import type { AnnularSurface } from '../../src/science/surface/annular-surface.ts'
import { turnSurface } from '../../src/science/surface/turn-surface.ts'
import { dish, madeSurface, saddle } from './made-whole-reading.ts'

const of = (surface: AnnularSurface, isSignKnown = true, expandedPictureUm = 0.03) => {
  return { surface, isSignKnown, expandedPictureUm }
}
const upsideDown = (surface: AnnularSurface) =>
  laySurface(surface, { turnDeg: 0, isUpsideDown: true })
const apart = (a: number, b: number) => Math.abs(((a - b + 540) % 360) - 180)

describe('the turn of one reading onto another', () => {
  it.each([0, 33.3, 121, 250.5])('is found where it was %f degrees', (turn) => {
    const face = madeSurface(2)
    const got = faceTurn(of(turnSurface(face, turn)), of(face))
    expect(got).toMatchObject({ standing: 'found', isOpposite: false })
    expect(apart(got.turnDeg, turn)).toBeLessThan(0.05) // the parabola over three degrees
  })

  it('is the other way round from the other side', () => {
    const [one, other] = [of(turnSurface(madeSurface(2), 70)), of(madeSurface(2))]
    const there = faceTurn(one, other)
    const back = faceTurn(other, one)
    expect(apart(there.turnDeg, 360 - back.turnDeg)).toBeLessThan(0.1) // twice the parabola
    expect(back.standing).toBe(there.standing)
  })

  it('can not be told of a pure dish, whatever the picture knows', () => {
    for (const expanded of [0, 0.03]) {
      const got = faceTurn(of(dish, true, expanded), of(turnSurface(dish, 40), true, expanded))
      expect(got).toMatchObject({ standing: 'no-mark', turnDeg: 0 })
    }
  })

  it('can not be told where the marks drown in the uncertainty', () => {
    const faint = { ...dish, coefficients: dish.coefficients.map((c, k) => (k === 4 ? 0.02 : c)) }
    expect(faceTurn(of(faint), of(turnSurface(faint, 50))).standing).not.toBe('no-mark')
    expect(faceTurn(of(faint, true, 0.5), of(faint, true, 0.5)).standing).toBe('no-mark')
  })

  it('is a guess between two of a saddle', () => {
    const got = faceTurn(of(saddle), of(turnSurface(saddle, 30)))
    expect(got.standing).toBe('guess')
    // At 150 or at 330 degrees: both are right.
    expect(apart(2 * got.turnDeg, 300)).toBeLessThan(0.1) // twice the parabola
  })

  it('is none where no turn makes one form of the other', () => {
    expect(faceTurn(of(dish), of(saddle)).standing).toBe('unlike')
    // A known dish is no known dome.
    expect(faceTurn(of(dish), of(upsideDown(dish))).standing).toBe('unlike')
    expect(faceTurn(of(dish), of(upsideDown(dish), false))).toMatchObject({
      standing: 'no-mark',
      isOpposite: true,
    })
  })

  it('is none of a face without height', () => {
    const plane = { ...dish, coefficients: dish.coefficients.map(() => 0) }
    expect(faceTurn(of(plane), of(madeSurface(3)))).toMatchObject({
      standing: 'no-mark',
      likeness: null,
    })
  })
})
