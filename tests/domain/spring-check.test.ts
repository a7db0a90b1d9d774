import { describe, expect, test } from 'vitest'
import { completeSpringCheck } from '../../src/domain/complete-spring-check.ts'
import { parseSpringCheck } from '../../src/domain/parse-spring-check.ts'
import { buildInstrument } from '../support/build-instrument.ts'
import { buildComponent } from '../support/build-seal.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const micrometer = buildInstrument('micrometer', {
  unit: 'mm',
  rangeFrom: 0,
  rangeTo: 25,
  resolutionStep: 0.01,
  largestError: 0.03,
})
const context = {
  components: [
    buildComponent({ outerDiameterMm: 60, innerDiameterMm: 52 }),
    buildComponent({ id: 12, kind: 'stationary-seat', outerDiameterMm: 64, innerDiameterMm: 50 }),
  ],
  instruments: [micrometer],
  today: '2026-11-25',
}
const least = {
  condition: 'as-found',
  springsCount: '6',
  freeLengthMm: '20',
  workingLengthMm: '14',
}
const parse = (changes: Record<string, unknown> = {}) =>
  parseSpringCheck({ ...least, ...changes }, context)
const faults = (changes: Record<string, unknown>) => faultsOf(parse(changes))
const complete = (changes: Record<string, unknown> = {}) =>
  completeSpringCheck({ ...accepted(parse(changes)), workOrderId: 1 }, context)
const loads = (...points: readonly (readonly [number, number])[]) => ({
  loads: points.map(([lengthMm, loadN]) => ({ lengthMm, loadN })),
})

describe('a spring of the bench', () => {
  test('of stated rate presses as Hooke says, on the smaller of the two lands', () => {
    const check = complete({ rateNPerMm: '3', solidLengthMm: '9', newLengthMm: '20,5' })
    expect(check).toMatchObject({
      rateNPerMm: 3,
      workingLoadN: 108,
      loadPerMmN: 18,
      remainingTravelMm: 5,
      setMm: 0.5,
      expandedUncertaintyN: null,
    })
    const areaMm2 = (Math.PI * (60 ** 2 - 52 ** 2)) / 4
    expect(check.facePressureMPa).toBeCloseTo(108 / areaMm2, 12) // doubles alone
  })

  test('takes its rate from one load and its free length', () => {
    const check = complete(loads([15, 20]))
    expect(check).toMatchObject({ rateNPerMm: 4, workingLoadN: 144 })
  })

  test('takes its rate from the line through several loads, with what that leaves open', () => {
    const check = complete(loads([18, 6], [16, 12], [14, 18]))
    expect(check.rateNPerMm).toBeCloseTo(3, 9) // an exact line: doubles alone
    expect(check.workingLoadN).toBeCloseTo(108, 9)
    expect(check.expandedUncertaintyN).toBeCloseTo(0, 6)
    const scattered = complete(loads([18, 6.2], [16, 11.8], [14, 18.1]))
    expect(scattered.expandedUncertaintyN).toBeGreaterThan(1)
    expect(scattered.coverageFactor).toBeGreaterThan(2)
  })

  test('says nothing of a load where nobody said how stiff it is', () => {
    expect(complete({ solidLengthMm: '9' })).toMatchObject({
      rateNPerMm: null,
      workingLoadN: null,
      facePressureMPa: null,
      loadPerMmN: null,
      remainingTravelMm: 5,
      setMm: null,
    })
  })

  test('read with a micrometer is uncertain by it at both ends', () => {
    const check = complete({ rateNPerMm: '3', instrumentId: String(micrometer.id) })
    const oneUm = Math.hypot(30 / Math.sqrt(3), 10 / Math.sqrt(12))
    // k = 2: nothing of it comes from a few repeats.
    expect(check.expandedUncertaintyN).toBeCloseTo((2 * 18 * Math.SQRT2 * oneUm) / 1000, 9)
    expect(check.instrument?.number).toBe('M-01')
  })

  test('may touch its solid length and its free one, and lie beyond neither', () => {
    expect(faults({ workingLengthMm: '20' })).toEqual([])
    expect(faults({ workingLengthMm: '20.01' })).toEqual(['workingLengthMm above'])
    expect(faults({ solidLengthMm: '14' })).toEqual([])
    expect(faults({ solidLengthMm: '14.01' })).toEqual(['solidLengthMm above'])
  })

  test('is refused by the name of what is wrong', () => {
    expect(faultsOf(parseSpringCheck({}, context))).toEqual([
      'condition empty',
      'freeLengthMm empty',
      'workingLengthMm empty',
    ])
    expect(faults({ springsCount: '0' })).toEqual(['springsCount below'])
    expect(faults({ springsCount: '1.5' })).toEqual(['springsCount not-a-whole-number'])
    expect(faults({ ...loads([15, 20]), rateNPerMm: '3' })).toEqual(['rateNPerMm one-of-two'])
    expect(faults(loads([15, 20], [14, 20]))).toEqual(['loads load-not-rising'])
    expect(faults(loads([15, 20], [15, 21]))).toEqual(['loads load-not-rising'])
    expect(faults(loads([20, 20]))).toEqual(['loads load-not-rising'])
    expect(faults({ loads: [{ lengthMm: 15 }] })).toEqual(['loads[0].loadN empty'])
    expect(faults({ loads: [{ lengthMm: 15, loadN: 20, at: 1 }] })).toEqual([
      'loads[0].at unknown-field',
    ])
    expect(faults({ stiffness: '3' })).toEqual(['stiffness unknown-field'])
  })
})
