import { describe, expect, it, test } from 'vitest'
import type { DialPoint } from '../../../src/science/runout/dial-point.ts'
import { fitHarmonics } from '../../../src/science/runout/fit-harmonics.ts'
import { leastSquaresRoundnessUm } from '../../../src/science/runout/least-squares-roundness-um.ts'
import { minimumZoneRoundness } from '../../../src/science/runout/minimum-zone-roundness.ts'
import { totalIndicatorReadingUm } from '../../../src/science/runout/total-indicator-reading-um.ts'
import { readReference } from '../read-reference.ts'
import { seededNormal, seededUniform } from '../seeded-random.ts'
import { eightPositions, rad } from './even-turn.ts'

interface RoundSet {
  readonly readings: readonly (readonly [number, number])[]
  readonly totalUm: number
  readonly meanUm: number
  readonly eccentricityUm: number
  readonly directionDeg: number
  readonly leastSquaresUm: number
  readonly minimumZoneUm: number
  readonly harmonics: readonly (readonly [number, number, number])[]
}
interface Reversal {
  readonly firstUm: readonly number[]
  readonly secondUm: readonly number[]
  readonly partRoundnessUm: number
  readonly spindleRoundnessUm: number
}
const { sets, reversal } = readReference<{
  sets: Record<string, RoundSet>
  reversal: Reversal
}>('runout/roundness.json')
const { checks } = readReference<{ checks: readonly Check[] }>('runout/checks.json')
interface Check {
  readonly id: string
  readonly fn: string
  readonly input: { thetaDeg: number[]; y: number[]; K: number; sigma: number }
  readonly expect: Record<string, readonly number[]> & { mean: number; uMean: number; tir: number }
}

const pointsOf = (readings: readonly (readonly [number, number])[]): DialPoint[] =>
  readings.map(([angleDeg, valueUm]) => ({ angleDeg, valueUm }))
/** Difference of two directions of a wave of this order, from 0 to half a wave. */
const apart = (a: number, b: number, turn = 360) => {
  const one = (((a - b) % turn) + turn) % turn
  return Math.min(one, turn - one)
}

const eight = eightPositions

describe('the worked example of eight positions', () => {
  const fit = fitHarmonics(eight, { highestOrder: 1 })
  const [first] = fit.harmonics

  it('gives the published total reading, mean and vector', () => {
    expect(totalIndicatorReadingUm(eight.map((one) => one.valueUm))).toBe(40)
    expect(fit.meanUm).toBeCloseTo(20, 12) // exact: eight whole numbers
    expect(first?.cosineUm).toBeCloseTo(-20.96, 3) // printed to 0.001
    expect(first?.sineUm).toBeCloseTo(3.768, 3)
    expect(first?.amplitudeUm).toBeCloseTo(21.296, 3)
    expect(2 * (first?.amplitudeUm ?? 0)).toBeCloseTo(42.59, 2)
    expect(first?.phaseDeg).toBeCloseTo(169.81, 2)
    expect(leastSquaresRoundnessUm(eight)).toBeCloseTo(1.92, 3)
  })

  it('has a minimum zone not above the least-squares one', () => {
    expect(minimumZoneRoundness(eight).roundnessUm).toBeLessThan(leastSquaresRoundnessUm(eight))
  })
})

describe.each(Object.entries(sets))('the set %s', (_, set) => {
  const points = pointsOf(set.readings)
  const highestOrder = Math.max(...set.harmonics.map(([order]) => order))
  const fit = fitHarmonics(points, { highestOrder })

  it('gives total, eccentricity and every harmonic', () => {
    const total = totalIndicatorReadingUm(points.map((one) => one.valueUm))
    expect(total).toBeCloseTo(set.totalUm, 9) // readings of three decimals
    expect(fit.meanUm).toBeCloseTo(set.meanUm, 9)
    expect(fit.harmonics[0]?.amplitudeUm).toBeCloseTo(set.eccentricityUm, 9)
    expect(apart(fit.harmonics[0]?.phaseDeg ?? 0, set.directionDeg)).toBeLessThan(1e-9)
    for (const [order, amplitude, phase] of set.harmonics) {
      const ours = fit.harmonics[order - 1]
      expect(ours?.amplitudeUm).toBeCloseTo(amplitude, 9)
      // The reference gives the phase of order x angle. Below a nm a direction is rounding.
      if (amplitude > 1e-3) {
        expect(apart((ours?.phaseDeg ?? 0) * order, phase)).toBeLessThan(1e-6)
      }
    }
  })

  it('gives the roundness by least squares and by the minimum zone', () => {
    expect(leastSquaresRoundnessUm(points)).toBeCloseTo(set.leastSquaresUm, 9)
    expect(minimumZoneRoundness(points).roundnessUm).toBeCloseTo(set.minimumZoneUm, 9)
  })
})

test.each(checks.filter((one) => one.fn === 'harmonics'))(
  'the check $id holds, with its uncertainties',
  ({ input, expect: wanted }) => {
    const points = input.thetaDeg.map((angleDeg, i) => ({ angleDeg, valueUm: input.y[i] ?? 0 }))
    const fit = fitHarmonics(points, {
      highestOrder: input.K,
      readingStandardUncertaintyUm: input.sigma,
    })
    expect(fit.meanUm).toBeCloseTo(wanted.mean, 9) // numpy gives 15 digits
    expect(fit.meanStandardUncertaintyUm).toBeCloseTo(wanted.uMean, 9)
    fit.harmonics.forEach((one, i) => {
      expect(one.amplitudeUm).toBeCloseTo(wanted.amp?.[i] ?? Number.NaN, 9)
      expect(one.amplitudeStandardUncertaintyUm).toBeCloseTo(wanted.uAmp?.[i] ?? Number.NaN, 9)
      const turn = (2 * Math.PI) / one.order
      expect(apart(rad(one.phaseDeg), wanted.phase?.[i] ?? 0, turn)).toBeLessThan(1e-9)
      expect(rad(one.phaseStandardUncertaintyDeg ?? 0)).toBeCloseTo(wanted.uPhase?.[i] ?? 0, 9)
    })
    expect(totalIndicatorReadingUm(input.y)).toBeCloseTo(wanted.tir, 12)
  },
)

describe('laws', () => {
  const uniform = seededUniform(51)
  const turnOf = (count: number) => {
    const waves = [1, 2, 3].map((order) => ({
      order,
      size: 1 + 20 * uniform(),
      phase: (360 / order) * uniform(),
    }))
    const points = Array.from({ length: count }, () => {
      const angleDeg = 360 * uniform()
      const of = (sum: number, one: (typeof waves)[number]) =>
        sum + one.size * Math.cos(rad(one.order * (angleDeg - one.phase)))
      return { angleDeg, valueUm: waves.reduce(of, 7) }
    })
    return { waves, points }
  }

  it('finds waves put in at uneven angles, whatever the zero, the order and the unit', () => {
    for (let trial = 0; trial < 50; trial++) {
      const { waves, points } = turnOf(24)
      const moved = [...points].reverse().map((one) => ({
        angleDeg: one.angleDeg + 720,
        valueUm: 25.4 * (one.valueUm - 300),
      }))
      const fits = [points, moved].map((one) => fitHarmonics(one, { highestOrder: 3 }))
      waves.forEach(({ order, size, phase }, i) => {
        fits.forEach((fit, k) => {
          const found = fit.harmonics[i]
          // Double precision of readings up to 1e4 um, at badly spread angles at times.
          expect(found?.amplitudeUm).toBeCloseTo(size * (k === 0 ? 1 : 25.4), 6)
          expect(apart(found?.phaseDeg ?? 0, phase, 360 / order)).toBeLessThan(1e-6)
        })
      })
    }
  })

  it('turns with the mark', () => {
    const { points } = turnOf(12)
    const turned = points.map((one) => ({ ...one, angleDeg: one.angleDeg + 33 }))
    const [a, b] = [points, turned].map((one) => fitHarmonics(one, { highestOrder: 2 }))
    a?.harmonics.forEach((one, i) => {
      const other = b?.harmonics[i]
      expect(other?.amplitudeUm).toBeCloseTo(one.amplitudeUm, 8) // rounding alone
      const turn = 360 / one.order
      expect(apart(other?.phaseDeg ?? 0, one.phaseDeg + 33, turn)).toBeLessThan(1e-8)
    })
    expect(minimumZoneRoundness(turned).roundnessUm).toBeCloseTo(
      minimumZoneRoundness(points).roundnessUm,
      9,
    )
  })

  it('states an uncertainty that 2000 noisy turns show', () => {
    const normal = seededNormal(9)
    const noisy = Array.from({ length: 2000 }, () => {
      const values = eight.map((one) => ({ ...one, valueUm: one.valueUm + 2 * normal() }))
      return fitHarmonics(values, { highestOrder: 1, readingStandardUncertaintyUm: 2 })
    })
    const sizes = noisy.map((one) => one.harmonics[0]?.amplitudeUm ?? 0)
    const mean = sizes.reduce((a, b) => a + b, 0) / sizes.length
    const sd = Math.sqrt(sizes.reduce((a, b) => a + (b - mean) ** 2, 0) / (sizes.length - 1))
    const stated = noisy[0]?.harmonics[0]?.amplitudeStandardUncertaintyUm ?? 0
    expect(stated).toBeCloseTo(1, 12) // 2 sqrt(2 / 8)
    expect(sd / stated).toBeGreaterThan(0.95) // 2000 trials: 1.6 % of their own
    expect(sd / stated).toBeLessThan(1.05)
  })
})

it.each([
  [() => fitHarmonics(eight, { highestOrder: 4 }), 'count of positions'],
  [() => fitHarmonics(eight.slice(0, 2), { highestOrder: 1 }), 'count of positions'],
  [() => fitHarmonics(eight, { highestOrder: 1.5 }), 'highestOrder'],
  [
    () => fitHarmonics(eight, { highestOrder: 1, readingStandardUncertaintyUm: -1 }),
    'readingStandardUncertaintyUm',
  ],
  [() => fitHarmonics([...eight, { angleDeg: 9, valueUm: NaN }], { highestOrder: 1 }), 'valueUm'],
])('%s is refused with the name of what is wrong', (call, name) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(name)
})

test('a part and a spindle told apart by reversal have their roundness', () => {
  const { firstUm, secondUm } = reversal
  const half = (sign: 1 | -1) =>
    firstUm.map((first, i) => ({
      angleDeg: (360 * i) / firstUm.length,
      valueUm: (first + sign * (secondUm[i] as number)) / 2,
    }))
  // Readings are rounded to 0.0001 um.
  expect(leastSquaresRoundnessUm(half(1))).toBeCloseTo(reversal.partRoundnessUm, 3)
  expect(leastSquaresRoundnessUm(half(-1))).toBeCloseTo(reversal.spindleRoundnessUm, 3)
  const waves = fitHarmonics(half(1), { highestOrder: 5 }).harmonics.map((one) => one.amplitudeUm)
  ;[0, 1.2, 0, 0, 0.4].forEach((amplitude, i) => {
    expect(waves[i]).toBeCloseTo(amplitude, 3)
  })
})
