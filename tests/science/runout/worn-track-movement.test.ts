import { expect, it } from 'vitest'
import { wornTrackMovement } from '../../../src/science/runout/worn-track-movement.ts'

it('gives the movement of the worked example', () => {
  const worn = wornTrackMovement({ trackWidthMm: 4.2, noseWidthMm: 3.95 })
  expect(worn.movementUm).toBeCloseTo(250, 9) // E31: 0.25 mm
  expect(worn.movementUm / 25_400).toBeCloseTo(0.0098, 4) // inches, as printed
  expect(worn.standardUncertaintyUm).toBeNull()
})

it('adds both uncertainties, and goes below 0 for a narrow track', () => {
  const worn = wornTrackMovement({
    trackWidthMm: 3.9,
    noseWidthMm: 3.95,
    trackStandardUncertaintyMm: 0.03,
    noseStandardUncertaintyMm: 0.04,
  })
  expect(worn.movementUm).toBeCloseTo(-50, 9)
  expect(worn.standardUncertaintyUm).toBeCloseTo(50, 9)
})

it('refuses a width of nothing and an uncertainty below 0', () => {
  expect(() => wornTrackMovement({ trackWidthMm: 0, noseWidthMm: 1 })).toThrow('trackWidthMm')
  expect(() => wornTrackMovement({ trackWidthMm: 1, noseWidthMm: 0 })).toThrow('noseWidthMm')
  expect(() =>
    wornTrackMovement({ trackWidthMm: 1, noseWidthMm: 1, noseStandardUncertaintyMm: -1 }),
  ).toThrow('standard uncertainty')
})
