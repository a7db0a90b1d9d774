import { describe, expect, test } from 'vitest'
import { type Input, openFields } from '../../src/domain/fields.ts'
import { noFlatnessBudgetInput } from '../../src/domain/flatness-budget-input.ts'
import { parseFlatnessBudget } from '../../src/domain/parse-flatness-budget.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const parse = (input: Input) => {
  const fields = openFields(input)
  const budget = parseFlatnessBudget(fields, input)
  return fields.finish(budget)
}
const bow = { deltaK: 0.5, expansionPerK: 4e-6, diameterMm: 60, thicknessMm: 10 }

test('states nothing where nothing was entered: a fourth of a band is not put in its place', () => {
  expect(accepted(parse({}))).toEqual(noFlatnessBudgetInput)
  const empty = { readingHalfWidthBands: '', viewingAngleLimitDeg: ' ', thermal: null }
  expect(accepted(parse(empty))).toEqual(noFlatnessBudgetInput)
})

test('takes the fields of the calculator of counted bands', () => {
  const input = {
    readingHalfWidthBands: 0.1,
    opticalFlatToleranceUm: 0.025,
    viewingAngleLimitDeg: 10,
    thermal: bow,
    repeatability: { standardDeviationBands: 0.15, count: 3 },
  }
  expect(accepted(parse(input))).toEqual({
    ...noFlatnessBudgetInput,
    ...input,
    repeatability: { standardDeviationBands: 0.15, count: 3, degreesOfFreedom: null },
  })
})

describe('repeats', () => {
  const repeats = (...bands: readonly unknown[]) =>
    parse({ repeats: bands.map((one) => ({ bands: one })) })

  test('are kept as typed beside what they were read as', () => {
    expect(accepted(repeats('2,0', ' 2.25 ')).repeats).toEqual([
      { bands: 2, typed: '2,0' },
      { bands: 2.25, typed: '2.25' },
    ])
  })

  test('are two or more, up to 24, and each a count', () => {
    expect(faultsOf(repeats(2))).toEqual(['repeats too-few'])
    expect(faultsOf(repeats(...Array.from({ length: 25 }, () => 2)))).toEqual(['repeats too-many'])
    expect(faultsOf(repeats(2, -1, 'x', ''))).toEqual([
      'repeats[1].bands below',
      'repeats[2].bands not-a-number',
      'repeats[3].bands empty',
    ])
    expect(faultsOf(parse({ repeats: '2 2' }))).toEqual(['repeats not-a-list'])
    expect(faultsOf(parse({ repeats: [{ bands: 1, order: 2 }, { bands: 1 }] }))).toEqual([
      'repeats[0].order unknown-field',
    ])
  })

  test('do not stand beside a scatter that is known from elsewhere', () => {
    const both = {
      repeats: [{ bands: 2 }, { bands: 2 }],
      repeatability: { standardDeviationBands: 0.1, count: 2 },
    }
    expect(faultsOf(parse(both))).toEqual(['repeatability one-of-two'])
  })
})

describe('a scatter known from elsewhere', () => {
  const known = (part: unknown) => parse({ repeatability: part })

  test('is of two counts at least, or of one where its degrees of freedom are stated', () => {
    expect(faultsOf(known({ standardDeviationBands: 0.1, count: 1 }))).toEqual([
      'repeatability.count below',
    ])
    const pooled = { standardDeviationBands: 0.1, count: 1, degreesOfFreedom: 24 }
    expect(accepted(known(pooled)).repeatability).toEqual(pooled)
  })

  test('is refused without its parts, or with others', () => {
    expect(faultsOf(known({}))).toEqual([
      'repeatability.standardDeviationBands empty',
      'repeatability.count empty',
    ])
    expect(faultsOf(known({ standardDeviationBands: 0.1, count: 3, n: 3 }))).toEqual([
      'repeatability.n unknown-field',
    ])
    expect(faultsOf(known('0.1'))).toContain('repeatability not-an-object')
  })
})

describe('thermal bow', () => {
  test('takes the expansion per kelvin, or in µm by metre and kelvin, never both', () => {
    const { expansionPerK: _, ...rest } = bow
    const inUm = parse({ flatThermal: { ...rest, expansionUmPerMK: '0,55' } })
    expect(accepted(inUm).flatThermal?.expansionPerK).toBeCloseTo(0.55e-6, 18) // rounding of doubles
    expect(faultsOf(parse({ thermal: { ...bow, expansionUmPerMK: 4 } }))).toEqual([
      'thermal.expansionPerK one-of-two',
    ])
  })

  test('is refused where a part of it is missing or impossible, by its path', () => {
    expect(faultsOf(parse({ thermal: { deltaK: '1' } }))).toEqual([
      'thermal.expansionPerK empty',
      'thermal.diameterMm empty',
      'thermal.thicknessMm empty',
    ])
    expect(faultsOf(parse({ flatThermal: { ...bow, thicknessMm: 0, deltaK: 'warm' } }))).toEqual([
      'flatThermal.deltaK not-a-number',
      'flatThermal.thicknessMm below',
    ])
    expect(faultsOf(parse({ thermal: { ...bow, alpha: 1 } }))).toEqual([
      'thermal.alpha unknown-field',
    ])
  })
})

test('bounds half width, angle and tolerance', () => {
  const beyond = {
    readingHalfWidthBands: 101,
    viewingAngleLimitDeg: 81,
    opticalFlatToleranceUm: -0.1,
  }
  expect(faultsOf(parse(beyond))).toEqual([
    'readingHalfWidthBands above',
    'viewingAngleLimitDeg above',
    'opticalFlatToleranceUm below',
  ])
})
