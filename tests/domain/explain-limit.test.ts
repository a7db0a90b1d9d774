import { expect, test } from 'vitest'
import { explainLimit } from '../../src/domain/explain-limit.ts'
import { buildLimitCase } from '../support/build-limit-case.ts'
import { buildLimit } from '../support/build-limit-set.ts'

const general = buildLimit({ id: 1 })
const carbon = buildLimit({ id: 2, faceMaterial: 'carbon-graphite' })
const seat = buildLimit({ id: 3, componentKind: 'stationary-seat', service: 'dry-gas' })
const small = buildLimit({ id: 4, faceMaterial: 'carbon-graphite', diameterUpToMm: 50 })
const high = buildLimit({ id: 5, faceMaterial: 'carbon-graphite', pressureOverKPa: 2000 })
const other = buildLimit({ id: 6, characteristic: 'roughness' })
const limits = [general, carbon, seat, small, high, other]

const known = buildLimitCase({
  faceMaterial: 'carbon-graphite',
  componentKind: 'rotating-face',
  service: 'slurry',
  diameterMm: 66,
  pressureKPa: 1000,
})
const explained = (limitCase = known, of = limits) => {
  const { applied, others } = explainLimit({ limits: of }, 'flatness', limitCase)
  return [applied?.limit.id, Object.fromEntries(others.map((one) => [one.limit.id, one.why]))]
}

test('says of every other limit of the characteristic why it did not apply', () => {
  expect(explained()).toEqual([
    2,
    {
      1: ['less-specific'],
      3: ['component-differs', 'service-differs'],
      4: ['diameter-outside'],
      5: ['pressure-outside'],
    },
  ])
})

test('says what is not known, rather than that it differs', () => {
  expect(explained(buildLimitCase())).toEqual([
    1,
    {
      2: ['material-not-known'],
      3: ['component-not-known', 'service-not-known'],
      4: ['material-not-known', 'diameter-not-known'],
      5: ['material-not-known', 'pressure-not-known'],
    },
  ])
})

test('says that another material is another one, and that no limit applies', () => {
  const alumina = buildLimitCase({ faceMaterial: 'alumina' })
  expect(explained(alumina, [carbon, other])).toEqual([undefined, { 2: ['material-differs'] }])
})

test('names a tie of a draft: the first of both stands, and the other one is tied', () => {
  const both = { ...known, diameterMm: 40, pressureKPa: 3000 }
  expect(explained(both, [general, small, high])).toEqual([
    4,
    { 1: ['less-specific'], 5: ['tied'] },
  ])
})

test('a limit by the speed of the shaft asks for it, over and up to', () => {
  const fast = buildLimit({ id: 7, speedOverPerMin: 1500, speedUpToPerMin: 3000 })
  const at = (speedPerMin: number | null) =>
    explained(buildLimitCase({ speedPerMin }), [general, fast])
  expect(at(3000)).toEqual([7, { 1: ['less-specific'] }])
  expect(at(1500)).toEqual([1, { 7: ['speed-outside'] }])
  expect(at(null)).toEqual([1, { 7: ['speed-not-known'] }])
})
