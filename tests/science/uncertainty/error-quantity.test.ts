import { expect, it } from 'vitest'
import { budgetLine } from '../../../src/science/uncertainty/budget-line.ts'
import { errorQuantity } from '../../../src/science/uncertainty/error-quantity.ts'

it('is 0 and scatters as its line, whatever the sensitivity', () => {
  const line = budgetLine({
    source: 'repeatability',
    value: 0.2,
    distribution: 't',
    sensitivity: -7,
    degreesOfFreedom: 3,
  })
  expect(errorQuantity('scatter', line)).toEqual({
    name: 'scatter',
    value: 0,
    distribution: 't',
    standardUncertainty: 0.2,
    degreesOfFreedom: 3,
  })
})
