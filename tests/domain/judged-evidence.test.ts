import { describe, expect, it } from 'vitest'
import { judgedReadings, judgedTests } from '../../src/domain/judged-evidence.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildStaticTest } from '../support/build-static-test.ts'

describe('judged evidence', () => {
  it('keeps every reading in its order, each beside its own verdict', () => {
    const evidence = buildEvidence({
      flatnessReadings: [
        buildFlatnessReading({ flatnessUm: 40 }),
        buildFlatnessReading({ id: 2, flatnessUm: 0.1 }),
      ],
    })
    const judged = judgedReadings(evidence)
    expect(judged.map((one) => [one.reading.id, one.judged.verdict])).toEqual([
      [1, 'fail'],
      [2, 'pass'],
    ])
  })

  it('shows beside a replaced reading what took its place', () => {
    const evidence = buildEvidence({
      flatnessReadings: [
        buildFlatnessReading({ replacedById: 2 }),
        buildFlatnessReading({ id: 2, replacesId: 1, reason: 'wrong lamp chosen' }),
      ],
    })
    const [first, second] = judgedReadings(evidence)
    expect(first?.replacedBy?.reason).toBe('wrong lamp chosen')
    expect(second?.replacedBy).toBeNull()
  })

  it('judges a test by drop and by leak rate, and shows its replacement', () => {
    const evidence = buildEvidence({
      staticTests: [
        buildStaticTest({ replacedById: 2 }),
        buildStaticTest({ id: 2, replacesId: 1 }),
      ],
    })
    const [first, second] = judgedTests(evidence)
    expect(first?.judged.map((one) => one.characteristic)).toEqual([
      'static-drop',
      'static-leak-rate',
    ])
    expect(first?.replacedBy?.id).toBe(2)
    expect(second?.replacedBy).toBeNull()
  })
})
