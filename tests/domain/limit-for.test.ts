import { describe, expect, test } from 'vitest'
import { limitFor } from '../../src/domain/limit-for.ts'
import { buildLimitCase } from '../support/build-limit-case.ts'
import { buildLimit, buildLimitSet } from '../support/build-limit-set.ts'

const general = buildLimit({ id: 1 })
const carbon = buildLimit({ id: 2, faceMaterial: 'carbon-graphite', upper: 1.2 })
const limitSet = buildLimitSet({ limits: [general, carbon] })
const ofMaterial = (faceMaterial: string | null) => buildLimitCase({ faceMaterial })
const chosen = (limits: ReturnType<typeof buildLimit>[], limitCase = buildLimitCase()) =>
  limitFor({ limits }, 'flatness', limitCase)?.limit.id

test('takes the limit for the material before the general one, in whatever order they stand', () => {
  expect(limitFor(limitSet, 'flatness', ofMaterial('carbon-graphite'))?.limit).toBe(carbon)
  expect(chosen([carbon, general], ofMaterial('carbon-graphite'))).toBe(2)
})

test('takes the general limit for other materials and where the material is not known', () => {
  expect(limitFor(limitSet, 'flatness', ofMaterial('alumina'))?.limit).toBe(general)
  expect(limitFor(limitSet, 'flatness', ofMaterial(null))?.limit).toBe(general)
})

test('answers undefined where the set has no limit: another material’s limit is none', () => {
  expect(chosen([carbon], ofMaterial('alumina'))).toBeUndefined()
  expect(chosen([carbon], ofMaterial(null))).toBeUndefined()
  expect(limitFor(limitSet, 'static-drop', buildLimitCase())).toBeUndefined()
})

describe('a range', () => {
  const small = buildLimit({ id: 3, diameterUpToMm: 75 })
  const middle = buildLimit({ id: 4, diameterOverMm: 75, diameterUpToMm: 150 })
  const large = buildLimit({ id: 5, diameterOverMm: 150 })
  const at = (diameterMm: number | null) =>
    chosen([general, large, small, middle], buildLimitCase({ diameterMm }))

  test('holds its upper end and not its lower one', () => {
    expect([25, 75, 75.001, 150, 150.001].map(at)).toEqual([3, 3, 4, 4, 5])
  })

  test('does not hold where the size is not known', () => {
    expect(at(null)).toBe(1)
  })

  test('is one condition, whether one of its ends is stated or both', () => {
    const narrow = buildLimit({ id: 6, diameterUpToMm: 20 })
    const wide = buildLimit({ id: 7, diameterOverMm: 10, diameterUpToMm: 200 })
    const material = buildLimit({ ...carbon, id: 8, diameterUpToMm: 200 })
    const limitCase = buildLimitCase({ diameterMm: 15, faceMaterial: 'carbon-graphite' })
    expect(chosen([wide, material], limitCase)).toBe(8)
    const inner = buildLimit({ id: 9, diameterOverMm: 12, diameterUpToMm: 18 })
    expect(chosen([wide, narrow, inner], limitCase)).toBe(9)
  })
})

test('counts conditions first: two that hold come before a narrow one', () => {
  const narrow = buildLimit({ id: 3, diameterOverMm: 49, diameterUpToMm: 51 })
  const two = buildLimit({ id: 4, service: 'dry-gas', pressureOverKPa: 2000 })
  const limitCase = buildLimitCase({ diameterMm: 50, service: 'dry-gas', pressureKPa: 4000 })
  expect(chosen([general, narrow, two], limitCase)).toBe(4)
  expect(chosen([general, narrow, two], { ...limitCase, pressureKPa: 2000 })).toBe(3)
  expect(chosen([general, narrow, two], { ...limitCase, service: null })).toBe(3)
})

test('tells the two faces apart', () => {
  const seat = buildLimit({ id: 3, componentKind: 'stationary-seat' })
  const of = (componentKind: 'stationary-seat' | 'rotating-face' | null) =>
    chosen([general, seat], buildLimitCase({ componentKind }))
  expect([of('stationary-seat'), of('rotating-face'), of(null)]).toEqual([3, 1, 1])
})

describe('a limit per millimetre', () => {
  const perMm = buildLimit({
    characteristic: 'chamber-face-squareness',
    lower: null,
    upper: 0.5,
    perMmOf: 'bore',
  })
  const of = (bore: number | null) =>
    limitFor(
      { limits: [perMm] },
      'chamber-face-squareness',
      buildLimitCase({ sizesMm: { bore, shaft: 50, face: null } }),
    )

  test('is multiplied by its size: 0.5 µm per mm of a 120 mm bore is 60 µm', () => {
    // A pump manual prints 0.060 mm for a bore of 120 mm.
    expect(of(120)).toEqual({ limit: perMm, lower: null, upper: 60, isSizeKnown: true })
  })

  test('says so where its size is not known, and gives no figure', () => {
    expect(of(null)).toEqual({ limit: perMm, lower: null, upper: null, isSizeKnown: false })
  })
})
