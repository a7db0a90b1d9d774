import { describe, expect, it } from 'vitest'
import { answerMarkedFlatness } from '../../src/domain/answer-marked-flatness.ts'
import type { Input } from '../../src/domain/fields.ts'
import { parseMarkedFlatnessRequest } from '../../src/domain/parse-marked-flatness-request.ts'
import { faultSentence } from '../../views/words/en/faults.ts'
import { markedRequest } from '../support/marked-request.ts'

const answer = (input: Input) => {
  const parsed = parseMarkedFlatnessRequest(input)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults))
  return answerMarkedFlatness(parsed.value)
}
const faultOf = (input: Input) => {
  const got = answer(input)
  return got.ok ? undefined : got.faults[0]
}
const mustAnswer = (input: Input) => {
  const got = answer(input)
  if (!got.ok) throw new Error(JSON.stringify(got.faults))
  return got.value
}
const good = markedRequest((r) => -2 * r * r, { count: 40, seed: 4 })

describe('answerMarkedFlatness', () => {
  it('gives figures that agree with each other, in um of the lamp', () => {
    const got = mustAnswer(good)
    // True height 2 (1 - 0.49) = 1.02 bands of 0.29378 um: 0.2997 um, to the stated U.
    expect(Math.abs(got.flatnessUm - 0.2997)).toBeLessThan(got.expandedUncertaintyUm)
    expect(got.flatnessMinimumZoneUm).toBeLessThanOrEqual(got.flatnessUm)
    expect(got.taperUm).toBeLessThan(0)
    expect(got.form).toBe('convex')
    expect([got.sees, got.method]).toEqual(['whole-surface', 'flatness/marked 1'])
    expect(got.lobes.map((lobe) => lobe.order)).toEqual([2, 3])
    expect([got.map.radii[0], got.map.radii.at(-1)]).toEqual([21, 30])
    const heights = got.map.heightsUm.flat()
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(got.flatnessUm, 12) // rounding
    expect(got.residualsBands).toHaveLength(40)
  })

  it('goes with the wavelength', () => {
    const { lamp: _, ...rest } = good
    const one = mustAnswer({ ...rest, wavelengthNm: 500 })
    const twice = mustAnswer({ ...rest, wavelengthNm: 1000 })
    expect(twice.flatnessUm).toBeCloseTo(2 * one.flatnessUm, 12) // rounding
    expect(one.bandHeightUm).toBe(0.25)
  })

  it('turns taper and form with what rising orders mean', () => {
    const other = mustAnswer({ ...good, increasingTowards: 'gap-closes' })
    expect(other.taperUm).toBeCloseTo(-(mustAnswer(good).taperUm ?? 0), 10) // rounding
    expect(other.form).toBe('concave')
  })

  it('has the lamp in its budget, and the flat where it is stated', () => {
    const sources = (input: Input) => mustAnswer(input).budget.map((line) => line.source)
    expect(sources(good)).toEqual(['marks', 'wavelength'])
    expect(sources({ ...good, opticalFlatToleranceUm: 0.1 })).toEqual([
      'marks',
      'optical-flat',
      'wavelength',
    ])
    const u = (input: Input) => mustAnswer(input).standardUncertaintyUm
    const more = Math.sqrt(u({ ...good, opticalFlatToleranceUm: 0.1 }) ** 2 - u(good) ** 2)
    expect(more).toBeCloseTo(0.1 / Math.sqrt(3), 10) // rounding
  })

  it('says of each refusal which field it is about, in a sentence', () => {
    const { points, inner, outer } = good
    const cases = [
      [{ innerDiameterMm: 50 }, 'inner', 'edges-not-one-ring'],
      [{ outer: { ...outer, ry: 460 }, inner: { ...inner, ry: 322 } }, 'outer', 'view-too-oblique'],
      [
        { points: points.map((one, i) => (i === 9 ? { ...one, x: 800, y: 600 } : one)) },
        'points[9]',
        'mark-off-land',
      ],
      [{ points: points.map((one, i) => ({ ...one, order: i % 2 })) }, 'points', 'too-few-orders'],
      [
        { points: points.map((one) => ({ ...one, y: 600 - Math.abs(one.y - 600) })) },
        'points',
        'marks-leave-gap',
      ],
      [
        { points: points.map((one, i) => (i === 9 ? { ...one, order: one.order + 2 } : one)) },
        'points[9].order',
        'mark-does-not-fit',
      ],
    ] as const
    for (const [over, field, kind] of cases) {
      const fault = faultOf({ ...good, ...over })
      expect(fault).toMatchObject({ field, kind })
      if (fault !== undefined) expect(faultSentence(fault)).not.toMatch(/undefined|NaN/)
    }
  })

  it('gives the same answer every time, bit for bit', () => {
    expect(mustAnswer(good)).toEqual(mustAnswer(good))
  })
})
