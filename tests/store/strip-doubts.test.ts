import { describe, expect, test } from 'vitest'
import { instrumentUse } from '../../src/domain/instrument-use.ts'
import { standingDoubts } from '../../src/domain/standing-doubts.ts'
import { addCalibration } from '../../src/store/add-calibration.ts'
import { addSpringCheck } from '../../src/store/add-spring-check.ts'
import { addWearTrack } from '../../src/store/add-wear-track.ts'
import { answerDoubts } from '../../src/store/answer-doubts.ts'
import { listTouched } from '../../src/store/list-touched.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { requireInstrument } from '../../src/store/require-instrument.ts'
import { newCalibration } from '../support/build-instrument.ts'
import { buildShop } from '../support/build-shop.ts'
import { actorOf, castAt, operator } from '../support/cast.ts'
import { addMeasuringInstruments } from '../support/measuring-instruments.ts'
import { freshSpring, freshTrack } from '../support/strip-steps.ts'

const day = castAt.slice(0, 10)

/** A track and springs read with a micrometer that is found beyond its tolerance. */
function setUp() {
  const shop = buildShop()
  const { store, cast, workOrder } = shop
  const { micrometer } = addMeasuringInstruments(shop)
  const by = { instrumentId: micrometer.id, instrument: instrumentUse(micrometer, day) }
  const tess = actorOf(cast.tess)
  const track = addWearTrack(store, freshTrack(shop, by), tess)
  const spring = addSpringCheck(store, freshSpring(shop, by), tess)
  const dates = { calibratedOn: day, dueOn: '2027-11-25' }
  const beyond = { ...dates, instrumentId: micrometer.id, asFound: 'beyond' } as const
  const found = addCalibration(store, newCalibration(beyond), operator)
  const doubts = () => standingDoubts(readEvidence(store, workOrder.id))
  const touched = () =>
    listTouched(store, {
      instrument: requireInstrument(store, micrometer.id),
      found,
      window: { from: null, to: null },
    })
  const answer = (kinds: readonly ('wear-track' | 'spring-check')[]) =>
    answerDoubts(
      store,
      {
        instrumentId: micrometer.id,
        calibrationId: found.id,
        subjects: kinds.map((subjectKind) => ({ subjectKind, subjectId: 1 })),
        answer: 'stands',
        reason: 'a hundredth changes nothing here',
        seenAnswerId: 0,
        by: cast.ian,
      },
      actorOf(cast.ian),
    )
  return { shop, track, spring, doubts, touched, answer, tess, by }
}

describe('a worn track and springs read with an instrument that was found wrong', () => {
  test('are in doubt, each with its figure, until an inspector says that they stand', () => {
    const { doubts, touched, answer } = setUp()
    expect(touched().map((one) => [one.subjectKind, one.figures[0]?.value])).toEqual([
      ['wear-track', 250],
      ['spring-check', 108],
    ])
    expect(doubts().map((one) => one.subjectKind)).toEqual(['wear-track', 'spring-check'])
    answer(['wear-track'])
    expect(doubts().map((one) => one.subjectKind)).toEqual(['spring-check'])
  })

  test('are out of doubt once they were read again', () => {
    const { shop, spring, doubts, touched, tess } = setUp()
    const again = { replacesId: spring.id, reason: 'read with another micrometer' }
    addSpringCheck(shop.store, freshSpring(shop, again), tess)
    expect(doubts().map((one) => one.subjectKind)).toEqual(['wear-track'])
    expect(touched().map((one) => one.isReplaced)).toEqual([false, true])
  })

  test('read with a rule touch no instrument', () => {
    const shop = buildShop()
    addMeasuringInstruments(shop)
    addWearTrack(shop.store, freshTrack(shop), actorOf(shop.cast.tess))
    expect(readEvidence(shop.store, shop.workOrder.id).doubts).toEqual([])
  })
})
