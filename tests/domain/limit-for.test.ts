import { expect, test } from 'vitest'
import { limitFor } from '../../src/domain/limit-for.ts'
import { buildLimit, buildLimitSet } from '../support/build-limit-set.ts'

const general = buildLimit({ id: 1 })
const carbon = buildLimit({ id: 2, faceMaterial: 'carbon-graphite', upper: 1.2 })
const limitSet = buildLimitSet({ limits: [general, carbon] })

test('takes the limit for the material before the general one, in whatever order they stand', () => {
  expect(limitFor(limitSet, 'flatness', 'carbon-graphite')).toBe(carbon)
  const turned = buildLimitSet({ limits: [carbon, general] })
  expect(limitFor(turned, 'flatness', 'carbon-graphite')).toBe(carbon)
})

test('takes the general limit for other materials and where the material is not known', () => {
  expect(limitFor(limitSet, 'flatness', 'alumina')).toBe(general)
  expect(limitFor(limitSet, 'flatness', null)).toBe(general)
})

test('answers undefined where the set has no limit: another material’s limit is none', () => {
  const carbonOnly = buildLimitSet({ limits: [carbon] })
  expect(limitFor(carbonOnly, 'flatness', 'alumina')).toBeUndefined()
  expect(limitFor(carbonOnly, 'flatness', null)).toBeUndefined()
  expect(limitFor(limitSet, 'static-drop', null)).toBeUndefined()
})
