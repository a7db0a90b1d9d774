import { expect, test } from 'vitest'
import { lapAdvice } from '../../src/domain/lap-advice.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'
import { buildComponent } from '../support/build-seal.ts'

const carbon = buildComponent({ outerDiameterMm: 60 })
const plate = { plateForm: 'concave', plateSagUm: 25, plateDiameterMm: 380 } as const

test('loose grains on carbon are warned of, bound ones and a hard ring are not', () => {
  const at = (
    abrasive: 'diamond-loose' | 'diamond-charged' | 'sheet',
    material = 'carbon-graphite',
  ) => lapAdvice(buildLapCycle({ abrasive }), { ...carbon, material }).isLooseOnCarbon
  expect(at('diamond-loose')).toBe(true)
  expect(at('diamond-charged')).toBe(false)
  expect(at('sheet')).toBe(false)
  expect(at('diamond-loose', 'tungsten-carbide')).toBe(false)
  expect(lapAdvice(buildLapCycle(), carbon).isLooseOnCarbon).toBe(false)
})

test('a concave plate leaves the ring convex, a convex one concave, a flat one flat', () => {
  const sag = (changes: Parameters<typeof buildLapCycle>[0]) =>
    lapAdvice(buildLapCycle({ ...plate, ...changes }), carbon).sagUm
  expect(sag({})).toBeCloseTo(0.6233, 4) // 25 × (60 / 380)², to four decimals
  expect(sag({ plateForm: 'convex' })).toBeCloseTo(-0.6233, 4) // as above
  expect(sag({ plateForm: 'flat', plateSagUm: 0 })).toBe(0)
})

test('nothing is reckoned where a size is missing, or the ring is wider than the plate', () => {
  const sag = (changes: object, face = carbon) =>
    lapAdvice(buildLapCycle({ ...plate, ...changes }), face).sagUm
  expect(sag({ plateForm: null })).toBeNull()
  expect(sag({ plateSagUm: null })).toBeNull()
  expect(sag({ plateDiameterMm: null })).toBeNull()
  expect(sag({ plateDiameterMm: 50 })).toBeNull()
  expect(sag({}, buildComponent())).toBeNull()
})
