import { expect, test } from 'vitest'
import { parseEquipment } from '../../src/domain/parse-equipment.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

test('reads an equipment position by its tag', () => {
  expect(accepted(parseEquipment({ tag: 'P-101', serviceFluid: 'thin juice' }))).toEqual({
    tag: 'P-101',
    description: '',
    serviceFluid: 'thin juice',
  })
  expect(faultsOf(parseEquipment({ description: 'pump' }))).toEqual(['tag empty'])
})
