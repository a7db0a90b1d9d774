import { describe, expect, test } from 'vitest'
import { completeSurvey } from '../../src/domain/complete-survey.ts'
import { computeSurvey } from '../../src/domain/compute-survey.ts'
import type { SurveySetUp, SurveySpot } from '../../src/domain/dial-survey.ts'
import { partialSurvey } from '../../src/domain/partial-survey.ts'
import { surveySpots } from '../../src/domain/survey-spots.ts'
import { buildInstrument } from '../support/build-instrument.ts'
import { buildSetUp, eightReadingsUm, freshSurvey } from '../support/build-survey.ts'

const rad = (deg: number) => (deg * Math.PI) / 180
const run = (
  setUp: SurveySetUp,
  umAt: (spot: SurveySpot) => number,
  characteristic: 'shaft-run-out' | 'chamber-face-squareness' = 'shaft-run-out',
) => computeSurvey({ setUp, characteristic }, umAt, 1)
const eight = (spot: SurveySpot) => eightReadingsUm[spot.positionIndex % 8] ?? 0

describe('what the readings of a survey say', () => {
  test('is the published example, turn by turn', () => {
    const { planes, totalsUm } = run(buildSetUp({ turnsCount: 2 }), eight)
    expect(totalsUm).toEqual([40, 40]) // E13
    expect(planes[0]?.figures.fittedRunOutUm).toBeCloseTo(42.59, 2)
  })

  test('is free of the sag of a bracket that was carried round', () => {
    const setUp = buildSetUp({ turned: 'indicator', sagUm: -30, topAngleDeg: 90 })
    const drooping = (spot: SurveySpot) => {
      const angle = setUp.anglesDeg[spot.positionIndex] ?? 0
      return eight(spot) - 15 * (1 - Math.cos(rad(angle - 90)))
    }
    const { totalsUm, planes } = run(setUp, drooping)
    expect(totalsUm[0]).toBeCloseTo(40, 9) // rounding
    expect(planes[0]?.figures.eccentricityDirectionDeg).toBeCloseTo(169.81, 2)
  })

  test('is reduced by the angle of a lever in its figures; the totals stay as the needle moved', () => {
    const { totalsUm, planes } = run(buildSetUp({ leverAngleDeg: 60 }), eight)
    expect(totalsUm).toEqual([40])
    expect(planes[0]?.figures.totalUm).toBeCloseTo(20, 9) // cos 60 degrees
  })

  test('takes scatter between turns into the uncertainty of the figures', () => {
    const noisy = (spot: SurveySpot) =>
      eight(spot) + (spot.turnIndex === 0 ? 1 : -1) * (spot.positionIndex % 2 === 0 ? 4 : -4)
    const calm = run(buildSetUp({ turnsCount: 2 }), eight).planes[0]?.figures
    const rough = run(buildSetUp({ turnsCount: 2 }), noisy).planes[0]?.figures
    expect(calm?.eccentricityStandardUncertaintyUm).toBeCloseTo(0.5, 9) // 1 sqrt(2 / 8)
    expect(rough?.eccentricityStandardUncertaintyUm).toBeGreaterThan(1.5)
  })

  test('calls a drift large from twice the uncertainty of a difference on', () => {
    const closed = buildSetUp({ isClosed: true })
    const back = (um: number) =>
      run(closed, (spot) => (spot.positionIndex === 8 ? um : eight(spot))).planes[0]?.turns[0]
    // Standard uncertainty 1 of a reading: 2.83 of a difference, twice.
    expect(back(2.8)).toMatchObject({ closingDriftUm: 2.8, isDriftLarge: false })
    expect(back(2.9)?.isDriftLarge).toBe(true)
    expect(back(-2.9)?.isDriftLarge).toBe(true)
  })

  test('warns of a face that was swept with the float let go, not of one with two indicators', () => {
    const face = buildSetUp({ surface: 'face', sweptDiameterMm: 100 })
    const open = run(face, eight, 'chamber-face-squareness')
    expect(open.cautions).toContain('float-not-held')
    const both = run({ ...face, secondInstrumentId: 2 }, eight, 'chamber-face-squareness')
    expect(both.cautions).not.toContain('float-not-held')
  })
})

describe('a face by two indicators', () => {
  const setUp = buildSetUp({
    surface: 'face',
    sweptDiameterMm: 100,
    anglesDeg: [0, 90, 180, 270],
    instrumentId: 1,
    secondInstrumentId: 2,
  })
  const read = (largestErrorOfSecondUm: number) => {
    const known = { unit: 'um', resolutionStep: 1, rangeFrom: 0, rangeTo: 1000 } as const
    const instruments = [1, 2].map((id) =>
      buildInstrument('dial-indicator', {
        id,
        number: `D-0${id}`,
        largestError: id === 1 ? 5 : largestErrorOfSecondUm,
        ...known,
      }),
    )
    const face = [30, 0, -30, 0]
    const readings = surveySpots(setUp, 'chamber-face-squareness').map((spot, id) => {
      const um = (face[spot.positionIndex] ?? 0) * (spot.indicator === 'first' ? 1 : -1)
      const by = { recordedById: 1, recordedByName: 'Tess', recordedAt: '2026-11-25T10:00:00.000Z' }
      return { ...spot, id, um, typed: String(um), ...by }
    })
    const { survey } = freshSurvey({ id: 1 }, { workOrderId: 1, setUp })
    const characteristic = 'chamber-face-squareness' as const
    const context = { components: [], instruments, today: '2026-11-25' }
    return completeSurvey({ ...survey, characteristic, readings }, context)
  }

  test('keeps what stood on the label of the second', () => {
    expect(read(5).measured.instrument.number).toBe('D-01')
    expect(read(5).measured.secondInstrument?.number).toBe('D-02')
    expect(read(5).result.totalsUm).toEqual([60])
  })

  test('is no surer than the worse of both, and a better second makes it no better', () => {
    const uOf = (error: number) => read(error).measured.uncertainty.expandedUncertainty
    expect(uOf(1)).toBe(uOf(5))
    expect(uOf(20)).toBeGreaterThan(2 * uOf(5))
    const readingOf = (error: number) => read(error).result.readingStandardUncertaintyUm ?? 0
    expect(readingOf(1)).toBe(readingOf(5))
    expect(readingOf(20)).toBeGreaterThan(2 * readingOf(5))
  })
})

test('a survey half read speaks by the positions read so far', () => {
  const setUp = buildSetUp({ isClosed: true, turnsCount: 2 })
  const survey = (count: number) => ({
    id: 1,
    workOrderId: 1,
    characteristic: 'shaft-run-out' as const,
    condition: 'as-left' as const,
    setUp,
    note: '',
    replacesId: null,
    reason: '',
    startedById: 1,
    startedByName: 'Tess',
    startedAt: '2026-11-25T10:00:00.000Z',
    end: null,
    readings: surveySpots(setUp, 'shaft-run-out')
      .slice(0, count)
      .map((spot, id) => ({
        ...spot,
        id,
        um: eight(spot),
        typed: String(eight(spot)),
        recordedById: 1,
        recordedByName: 'Tess',
        recordedAt: '2026-11-25T10:00:00.000Z',
      })),
  })
  expect(partialSurvey(survey(2))).toBeNull()
  const part = partialSurvey(survey(5))
  expect(part?.setUp.anglesDeg).toEqual([0, 45, 90, 135, 180])
  const context = {
    components: [],
    instruments: [buildInstrument('dial-indicator', { id: 1 })],
    today: '2026-11-25',
  }
  expect(part === null ? [] : completeSurvey(part, context).result.totalsUm).toEqual([40])
  expect(partialSurvey(survey(18))?.setUp.turnsCount).toBe(2)
})
