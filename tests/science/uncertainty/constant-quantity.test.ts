import { expect, it } from 'vitest'
import { constantQuantity } from '../../../src/science/uncertainty/constant-quantity.ts'

it('is exact: nothing that scatters, infinitely many degrees of freedom', () => {
  expect(constantQuantity('volumeL', 5)).toEqual({
    name: 'volumeL',
    value: 5,
    distribution: 'normal',
    standardUncertainty: 0,
    degreesOfFreedom: null,
  })
})

it('refuses what is no number, by its name', () => {
  expect(() => constantQuantity('volumeL', Number.NaN)).toThrow(/requires volumeL as a finite/)
})
