import { expect, test } from 'vitest'
import { lapRows } from '../../src/domain/lap-rows.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'
import { buildComponent, buildSeal } from '../support/build-seal.ts'

const seal = buildSeal({
  components: [
    buildComponent({ minimumNoseHeightMm: 1.5 }),
    buildComponent({ id: 12, kind: 'stationary-seat' }),
  ],
})

test('lists every cycle, a replaced one beside what took its place', () => {
  const rows = lapRows(
    buildEvidence({
      seal,
      lapCycles: [
        buildLapCycle({ heightAfterMm: 1.6, replacedById: 3 }),
        buildLapCycle({ id: 2, componentId: 12, heightAfterMm: 8 }),
        buildLapCycle({ id: 3, replacesId: 1, heightAfterMm: 1.49, reason: 'misread' }),
      ],
    }),
  )
  expect(rows.map((one) => [one.face, one.step?.number, one.standing])).toEqual([
    ['rotating-face', undefined, 'unknown'],
    ['stationary-seat', 1, 'unknown'],
    ['rotating-face', 1, 'below'],
  ])
  expect(rows[0]).toMatchObject({ marginMm: null, replacedBy: { id: 3 } })
  expect(rows[1]).toMatchObject({ marginMm: null, replacedBy: null })
  expect(rows[2]?.marginMm).toBeCloseTo(-0.01, 12) // rounding of doubles
})

test('is empty where nothing was lapped', () => {
  expect(lapRows(buildEvidence())).toEqual([])
})
