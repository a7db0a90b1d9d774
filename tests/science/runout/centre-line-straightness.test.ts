import { expect, it } from 'vitest'
import { centreLineStraightness } from '../../../src/science/runout/centre-line-straightness.ts'
import { rad } from './even-turn.ts'

const bent = (deg: number) =>
  [0, 100, 200, 300, 400].map((positionMm) => {
    const bow = 30 * Math.sin((Math.PI * positionMm) / 400)
    // Held in centres that are off: the whole line is moved and leans.
    return {
      positionMm,
      xUm: bow * Math.cos(rad(deg)) + 7 + 0.05 * positionMm,
      yUm: bow * Math.sin(rad(deg)) - 3,
    }
  })

it('finds the bow, where it is and which way, whatever the ends lean', () => {
  const { bow, fromEnds, minimumZoneUm, leastSquaresUm } = centreLineStraightness(bent(130))
  expect(bow.departureUm).toBeCloseTo(30, 9)
  expect(bow.positionMm).toBe(200)
  expect(bow.directionDeg).toBeCloseTo(130, 9)
  expect(fromEnds.at(-1)?.departureUm).toBeCloseTo(0, 9)
  expect(minimumZoneUm).toBeCloseTo(30, 5) // a half sine lies in a cylinder as wide as its height
  expect(leastSquaresUm).toBeGreaterThan(minimumZoneUm)
})

it('is the same whichever way round the shaft is taken', () => {
  const turned = centreLineStraightness([...bent(130)].reverse())
  expect(turned.minimumZoneUm).toBeCloseTo(centreLineStraightness(bent(10)).minimumZoneUm, 5)
  expect(turned.bow.departureUm).toBeCloseTo(30, 9)
})

it('calls a straight shaft straight', () => {
  const straight = [0, 50, 90].map((positionMm) => ({ positionMm, xUm: 0, yUm: 0 }))
  expect(centreLineStraightness(straight)).toMatchObject({
    minimumZoneUm: 0,
    bow: { departureUm: 0, directionDeg: 0 },
  })
})

it('refuses two sections, and two at one position', () => {
  const [a, b, c] = bent(0)
  if (a === undefined || b === undefined || c === undefined) throw new Error('no sections')
  expect(() => centreLineStraightness([a, b])).toThrow('count of centres')
  expect(() => centreLineStraightness([a, b, { ...c, positionMm: 100 }])).toThrow('different')
})
