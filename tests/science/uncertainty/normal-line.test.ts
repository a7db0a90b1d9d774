import { expect, it } from 'vitest'
import { normalLine } from '../../../src/science/uncertainty/normal-line.ts'

it('gives value times sensitivity, normal and well known', () => {
  // A certificate of 240 ug with a factor of 3 is u = 80 ug: JCGM 100:2008, 4.3.3.
  const line = normalLine({ source: 'calibration', value: 240 / 3, sensitivity: -2 })
  expect(line).toEqual({
    source: 'calibration',
    value: 80,
    distribution: 'normal',
    sensitivity: -2,
    contribution: 160,
    degreesOfFreedom: null,
  })
})

it('refuses an uncertainty below nought', () => {
  expect(() => normalLine({ source: 'x', value: -1, sensitivity: 1 })).toThrow(RangeError)
})
