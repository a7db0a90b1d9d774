import { expect, it } from 'vitest'
import { bubbleLeak } from '../../../src/science/leak/bubble-leak.ts'

it('is that of the worked example: 0.1 mL/s are 23.87 bubbles of 2 mm a second', () => {
  // E26 of the facts.
  const of = (bubblesCount: number) => bubbleLeak({ bubblesCount, elapsedS: 1, diameterMm: 2 })
  expect(of(23.87).leakMlPerS).toBeCloseTo(0.1, 4)
  // Printed volumes of a bubble: 14.1 mm3 of 3 mm, 33.5 of 4 mm.
  const volume = (diameterMm: number) =>
    1000 * bubbleLeak({ bubblesCount: 1, elapsedS: 1, diameterMm }).leakMlPerS
  expect(volume(3)).toBeCloseTo(14.1, 1)
  expect(volume(4)).toBeCloseTo(33.5, 1)
  expect(of(10).halfWidthMlPerS).toBeCloseTo(of(10).leakMlPerS / 2, 12)
})

it('refuses a bubble that is none', () => {
  expect(() => bubbleLeak({ bubblesCount: 1, elapsedS: 1, diameterMm: 0 })).toThrow('diameterMm')
  expect(() => bubbleLeak({ bubblesCount: -1, elapsedS: 1, diameterMm: 2 })).toThrow('bubblesCount')
})
