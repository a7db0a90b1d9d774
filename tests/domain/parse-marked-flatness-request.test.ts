import { describe, expect, it } from 'vitest'
import type { Input } from '../../src/domain/fields.ts'
import { parseMarkedFlatnessRequest } from '../../src/domain/parse-marked-flatness-request.ts'
import { markedRequest } from '../support/marked-request.ts'

const good = markedRequest((r) => r, { count: 20, seed: 3 })
const faultsOf = (input: Input) => {
  const parsed = parseMarkedFlatnessRequest(input)
  return parsed.ok ? [] : parsed.faults.map(({ field, kind }) => `${field} ${kind}`)
}

describe('parseMarkedFlatnessRequest', () => {
  it('reads points, edges and what is known beside them', () => {
    const parsed = parseMarkedFlatnessRequest({
      ...good,
      opticalFlatToleranceUm: 0.05,
      viewingAngleLimitDeg: 5,
      thermal: { deltaK: 1, expansionPerK: 4e-6, diameterMm: 60, thicknessMm: 10 },
    })
    expect(parsed).toMatchObject({
      ok: true,
      value: {
        lampId: 'helium',
        outer: good.outer,
        points: good.points,
        increasingTowards: 'gap-opens',
        opticalFlatToleranceUm: 0.05,
        viewingAngleDeg: undefined,
        thermal: { deltaK: 1 },
      },
    })
  })

  it.each([
    'imageWidth',
    'imageHeight',
    'outer',
    'inner',
    'outerDiameterMm',
    'innerDiameterMm',
    'points',
    'increasingTowards',
  ])('asks for %s', (name) => {
    const faults = faultsOf({ ...good, [name]: undefined })
    expect(faults).toContain(`${name} empty`)
  })

  it('takes 20 points and refuses 19', () => {
    expect(faultsOf(good)).toEqual([])
    expect(faultsOf({ ...good, points: good.points.slice(1) })).toEqual(['points too-few'])
  })

  it('takes whole and half orders alone', () => {
    const withOrder = (order: unknown) => ({
      ...good,
      points: good.points.map((one, i) => (i === 2 ? { ...one, order } : one)),
    })
    expect(faultsOf(withOrder(4.5))).toEqual([])
    expect(faultsOf(withOrder(-3))).toEqual([])
    expect(faultsOf(withOrder(4.25))).toEqual(['points[2].order not-whole-or-half'])
    expect(faultsOf(withOrder('four'))).toEqual(['points[2].order not-a-number'])
  })

  it('names a point outside the picture, and fields that are not here', () => {
    const points = good.points.map((one, i) => (i === 5 ? { ...one, x: 1601, z: 1 } : one))
    expect(faultsOf({ ...good, points }).sort()).toEqual([
      'points[5].x above',
      'points[5].z unknown-field',
    ])
    expect(faultsOf({ ...good, pattern: 'convex' })).toEqual(['pattern unknown-field'])
  })

  it('takes a lamp or a wavelength, and the inner diameter smaller than the outer', () => {
    expect(faultsOf({ ...good, wavelengthNm: 589 })).toEqual(['lamp one-of-two'])
    expect(faultsOf({ ...good, lamp: undefined, wavelengthNm: 589 })).toEqual([])
    expect(faultsOf({ ...good, innerDiameterMm: 60 })).toEqual([
      'innerDiameterMm inner-not-smaller',
    ])
  })
})
