import { expect, test } from 'vitest'
import { didTheWork } from '../../src/domain/did-the-work.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'
import { buildMeasuredValue } from '../support/build-measured-value.ts'

test('who only lapped did the work too, a cycle since replaced as well', () => {
  const lapCycles = [buildLapCycle({ recordedById: 7, replacedById: 2 }), buildLapCycle({ id: 2 })]
  const evidence = buildEvidence({ lapCycles })
  expect(didTheWork(evidence, 7, null)).toBe(true)
  expect(didTheWork(evidence, 8, null)).toBe(false)
})

test('who measured or handed over did the work, and who lapped for an earlier order did not', () => {
  const evidence = buildEvidence({
    flatnessReadings: [],
    staticTests: [],
    measuredValues: [buildMeasuredValue({ recordedById: 5 })],
    earlierLapCycles: [buildLapCycle({ recordedById: 6 })],
  })
  const handOver = buildEvidence().handOver!
  expect([5, handOver.byId, 6].map((id) => didTheWork(evidence, id, handOver))).toEqual([
    true,
    true,
    false,
  ])
})
