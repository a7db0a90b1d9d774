import { describe, expect, it } from 'vitest'
import {
  type CombinationRecords,
  type CombinationRefusal,
  combinationRefusal,
  combinationRefusals,
} from '../../src/domain/combination-refusal.ts'
import { combineWholeFaces } from '../../src/domain/combine-whole-faces.ts'
import type { Doubt } from '../../src/domain/doubt.ts'
import type { WholeReading } from '../../src/domain/pair-to-compare.ts'
import { turnSurface } from '../../src/science/surface/turn-surface.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'
import { dish, madeSurface, madeWholeReading, saddle } from './made-whole-reading.ts'

const face = madeSurface(2)
const first = madeWholeReading(1, face)
const second = madeWholeReading(2, turnSurface(face, 40))
const records = (
  flatnessReadings: readonly WholeReading[],
  more: Partial<CombinationRecords> = {},
): CombinationRecords => ({ flatnessReadings, lapCycles: [], doubts: [], ...more })
const refusal = (other: WholeReading, more: Partial<CombinationRecords> = {}) =>
  combinationRefusal([first, other], records([first, other], more))
const changed = (reading: Partial<WholeReading>) => ({ ...second, ...reading })
const at = (hour: number) => ({
  recordedAt: `2026-11-24T${String(hour).padStart(2, '0')}:30:00.000Z`,
})
/** Of the same form, and so much higher that the two figures contradict each other. */
const grown = (surface: typeof face, by: number) => ({
  ...surface,
  coefficients: surface.coefficients.map((one) => by * one),
})
const doubt: Doubt = {
  subjectKind: 'flatness-reading',
  subjectId: 2,
  calibrationId: 1,
  instrumentId: 2,
  instrumentNumber: 'F-01',
  foundOn: '2026-11-25',
  answer: null,
  reason: '',
  byName: '',
  at: '',
}
const combined: WholeReading = {
  ...first,
  ...combineWholeFaces([first, second]).computed,
  id: 3,
  wholeFace: combineWholeFaces([first, second]).wholeFace,
}

describe('readings are combined', () => {
  it('where they are two photographs of one face in one state', () => {
    expect(refusal(second)).toBeNull()
    expect(refusal(second, { lapCycles: [buildLapCycle({ ...at(8) })] })).toBeNull()
  })

  it('where a doubt was answered: it stands', () => {
    expect(refusal(second, { doubts: [{ ...doubt, answer: 'stands' }] })).toBeNull()
  })

  it('with a third one, which counts beside the two parts of a combined one', () => {
    const third = madeWholeReading(4, turnSurface(face, 200))
    const all = [first, second, combined, third]
    expect(combinationRefusal([combined, third], records(all))).toBeNull()
  })
})

describe('readings are not combined', () => {
  const oneWay: readonly [CombinationRefusal, ReturnType<typeof refusal>][] = [
    ['one-reading', combinationRefusal([first, first], records([first]))],
    ['other-face', refusal(changed({ componentId: 12 }))],
    ['other-condition', refusal(changed({ condition: 'as-found' }))],
    ['replaced', refusal(changed({ replacedById: 9 }))],
    ['no-surface', refusal(changed({ wholeFace: { ...second.wholeFace, surface: null } }))],
    ['same-photo', refusal(changed({ wholeFace: first.wholeFace }))],
    ['other-lap', refusal(second, { lapCycles: [buildLapCycle(at(9))] })],
    ['lapped-since', refusal(second, { lapCycles: [buildLapCycle(at(20))] })],
    ['other-instrument', refusal(changed({ flatInstrumentId: 7 }))],
    [
      'other-calibration',
      refusal(changed({ flat: { ...second.flat, certificateNumber: 'another' } })),
    ],
    ['in-doubt', refusal(second, { doubts: [doubt] })],
    [
      'other-land',
      refusal(
        changed({
          wholeFace: { ...second.wholeFace, surface: { ...face, radiusRatio: 0.6 } },
        }),
      ),
    ],
    [
      'unlike',
      combinationRefusal(
        [madeWholeReading(1, dish), madeWholeReading(2, saddle)],
        records([madeWholeReading(1, dish), madeWholeReading(2, saddle)]),
      ),
    ],
    ['disagree', refusal(madeWholeReading(2, grown(turnSurface(face, 40), 6)))],
    ['combined-already', combinationRefusal([first, second], records([first, second, combined]))],
  ]

  it.each(oneWay)('where the reason is %s', (reason, got) => {
    expect(got).toBe(reason)
  })

  it('for any other reason than these', () => {
    expect(oneWay.map(([reason]) => reason)).toEqual(combinationRefusals)
  })

  it('where a combined one is put beside its own part', () => {
    const all = [first, second, combined]
    expect(combinationRefusal([combined, first], records(all))).toBe('combined-already')
  })
})
