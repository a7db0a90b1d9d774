import { beforeEach, describe, expect, it } from 'vitest'
import { certifiedSurveys } from '../../src/domain/certified-surveys.ts'
import type { Instrument } from '../../src/domain/instrument.ts'
import { liftCertificateRecord } from '../../src/domain/lift-certificate-record.ts'
import { addSurveyReading } from '../../src/store/add-survey-reading.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { startDialSurvey } from '../../src/store/start-dial-survey.ts'
import { addDial, addSurvey } from '../support/add-survey.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { freshSurvey } from '../support/build-survey.ts'
import { actorOf } from '../support/cast.ts'
import { workAndRelease } from '../support/shop-steps.ts'

let shop: Shop
let dial: Instrument
beforeEach(() => {
  shop = buildShop()
  dial = addDial(shop)
})

const certified = () => certifiedSurveys(readEvidence(shop.store, shop.workOrder.id))
/** Twenty micrometres off, highest at 70, the second turn and the closing reading two higher. */
const twoTurns = (angleDeg: number, turnIndex: number) =>
  20 * Math.cos(((angleDeg - 70) * Math.PI) / 180) + 2 * turnIndex

describe('certifiedSurveys', () => {
  it('keeps readings as typed, turn by turn, and what is drawn of them', () => {
    const setUp = { turnsCount: 2, isClosed: true }
    addSurvey(shop, dial, { characteristic: 'shaft-run-out', umAt: twoTurns, setUp })
    const [survey] = certified()
    expect(survey?.rows).toHaveLength(9)
    expect(survey?.rows[0]).toMatchObject({ angleDeg: 0, spot: 'position', typed: ['6.8', '8.8'] })
    expect(survey?.rows[8]).toMatchObject({ angleDeg: 0, spot: 'closing', typed: ['6.8', '8.8'] })
    const [plane] = survey?.planes ?? []
    // A turn is zeroed anywhere: turns are laid over each other by their means. Rounding alone.
    const drawn = [plane?.turns[0]?.[0], plane?.turns[1]?.[0], plane?.closing[1], plane?.points[0]]
    for (const one of drawn) expect(one?.valueUm).toBeCloseTo(drawn[0]?.valueUm ?? 0, 9)
    // Of readings rounded to 0.1 um, at 0 degrees.
    expect(drawn[0]?.valueUm).toBeCloseTo(20 * Math.cos((70 * Math.PI) / 180), 0)
    expect(plane?.eccentricityUm).toBeCloseTo(20, 1)
    expect(plane?.directionDeg).toBeCloseTo(70, 0)
    expect(plane?.closingDriftUm?.text).toBe('0.0')
  })

  it('holds every mean between the circles of the minimum zone', () => {
    const umAt = (deg: number) => 9 * Math.cos((2 * deg * Math.PI) / 180) + twoTurns(deg, 0)
    addSurvey(shop, dial, { characteristic: 'shaft-run-out', umAt })
    const [plane] = certified()[0]?.planes ?? []
    const { cosineUm, sineUm, innerUm, outerUm } = plane!.zone
    for (const { angleDeg, valueUm } of plane!.points) {
      const angle = (angleDeg * Math.PI) / 180
      const left = valueUm - cosineUm * Math.cos(angle) - sineUm * Math.sin(angle)
      expect(left).toBeGreaterThanOrEqual(innerUm)
      expect(left).toBeLessThanOrEqual(outerUm)
    }
    expect(Number(plane?.roundnessMinimumZoneUm.text)).toBeCloseTo(outerUm - innerUm, 1)
  })

  it('leaves out a survey that is still open: it is no result', () => {
    const { survey, readings } = freshSurvey(dial, { workOrderId: shop.workOrder.id })
    const by = actorOf(shop.cast.tess)
    const { id } = startDialSurvey(shop.store, survey, by)
    const of = { workOrderId: shop.workOrder.id, surveyId: id }
    for (const one of readings) addSurveyReading(shop.store, of, one, by)
    expect(certified()).toEqual([])
  })

  it('tells the tilt of a face, and its movement at the seal where its size is known', () => {
    const setUp = { sweptDiameterMm: 140, sealMeanDiameterMm: 70 }
    addSurvey(shop, dial, { characteristic: 'chamber-face-squareness', eccentricityUm: 40, setUp })
    const [survey] = certified()
    // 80 um over 140 mm: facts, 3.2.
    // Readings are typed to 0.1 um: the tilt may be off by a thousandth.
    expect(survey?.tilt?.mrad.value).toBeCloseTo(0.571, 2)
    expect(survey?.tilt?.movementAtSealUm?.value).toBeCloseTo(40, 0)
  })

  it('keeps both ends of a float, which has no circle', () => {
    const setUp = { anglesDeg: [0, 180], turnsCount: 2 }
    const umAt = (deg: number, turn: number) => (deg === 180 ? 120 + turn : 0)
    addSurvey(shop, dial, { characteristic: 'end-play', umAt, setUp })
    const [survey] = certified()
    expect(survey?.planes).toEqual([])
    expect(survey?.rows.map((one) => [one.spot, one.angleDeg, ...one.typed])).toEqual([
      ['first-end', null, '0', '0'],
      ['second-end', null, '120', '121'],
    ])
  })

  it('says straightness and bow of a shaft swept at planes', () => {
    const setUp = { planesMm: [0, 100, 200], place: 'between-centres' } as const
    addSurvey(shop, dial, { characteristic: 'shaft-straightness', eccentricityUm: 20, setUp })
    const [survey] = certified()
    expect(survey?.planes.map((one) => one.positionMm)).toEqual([0, 100, 200])
    // Every section lies off alike: the line through them is straight.
    expect(survey?.straightness?.minimumZoneUm.text).toBe('0.0')
  })

  it('marks what a later survey of the kind has overtaken', () => {
    addSurvey(shop, dial, { characteristic: 'shaft-run-out', eccentricityUm: 40 })
    addSurvey(shop, dial, { characteristic: 'shaft-run-out', eccentricityUm: 10 })
    expect(certified().map((one) => one.isNewest)).toEqual([false, true])
  })

  it('stands in the record of a certificate, and older records stand without it', () => {
    addSurvey(shop, dial, { characteristic: 'shaft-run-out' })
    const { certificate } = workAndRelease(shop)
    expect(certificate.record.surveys).toHaveLength(1)
    const { surveys: _, ...older } = certificate.record
    expect(liftCertificateRecord(older).surveys).toBeUndefined()
  })
})
