import { describe, expect, test } from 'vitest'
import { askCalculator } from '../../support/ask-calculator.ts'
import { testApp } from '../../support/test-app.ts'

const shop = testApp()
const { postJson, get } = shop
const { ask, refusals } = askCalculator(shop)

/** E13 of the facts. */
const eight = [0, 7, 24, 38, 40, 33, 16, 2].map((valueUm, i) => ({ angleDeg: 45 * i, valueUm }))

describe('the calculator of run-out', () => {
  test('gives the worked example by the names of the contract', async () => {
    const got = await ask('run-out', { readings: eight, kind: 'radial' })
    expect(got.totalIndicatorReadingUm).toBe(40)
    expect(got.eccentricityUm).toBeCloseTo(21.296, 3) // printed to 0.001
    expect(got.eccentricityDirectionDeg).toBeCloseTo(169.81, 2)
    expect(got.fittedRunOutUm).toBeCloseTo(42.59, 2)
    expect(got.roundnessLeastSquaresUm).toBeCloseTo(1.92, 3)
    expect(got.roundnessMinimumZoneUm).toBeLessThan(1.92)
    expect(got.couldBeMissedUm).toBeCloseTo(42.592 * (1 - Math.cos(Math.PI / 8)), 3)
    expect(got).toMatchObject({ method: 'run-out/survey 1' })
    expect(got).not.toHaveProperty('tiltMrad')
    expect(got).not.toHaveProperty('budget')
    expect((got.harmonics as { order: number }[]).map((one) => one.order)).toEqual([1, 2, 3])
  })

  test('gives tilt, its direction and the movement at the seal of a face', async () => {
    const readings = [0, 30, 60, 90, 120, 150, 180, 210, 240, 270, 300, 330].map((angleDeg) => ({
      angleDeg,
      valueUm: 100 + 40 * Math.cos(((angleDeg - 75) * Math.PI) / 180),
    }))
    const body = { readings, kind: 'face', sweptDiameterMm: 140, sealMeanDiameterMm: 55 }
    const got = await ask('run-out', body)
    expect(got.tiltMrad).toBeCloseTo(0.5714, 4) // E15
    expect(got.tiltDirectionDeg).toBeCloseTo(75, 9)
    expect(got.movementAtSealUm).toBeCloseTo(31.43, 2)
  })

  test('states uncertainties where that of a reading is stated, and no direction in the noise', async () => {
    const got = await ask('run-out', {
      readings: eight,
      kind: 'radial',
      readingStandardUncertaintyUm: 2,
    })
    expect(got.standardUncertaintyUm).toBeCloseTo(2 * Math.SQRT2, 12)
    expect(got.expandedUncertaintyUm).toBeCloseTo(4 * Math.SQRT2, 12)
    expect(got.coverageFactor).toBe(2)
    expect(got.budget).toMatchObject([{ source: 'reading', value: 2 }])
    expect(got.standardUncertainties).toMatchObject({ fittedRunOutUm: 2 })
    const lost = await ask('run-out', {
      readings: eight,
      kind: 'radial',
      readingStandardUncertaintyUm: 30,
    })
    expect(lost.eccentricityDirectionDeg).toBeNull()
  })

  test('takes a closing reading at 360 as the position of 0', async () => {
    const closed = [...eight, { angleDeg: 360, valueUm: 0 }]
    const got = await ask('run-out', { readings: closed, kind: 'radial' })
    expect(got.totalIndicatorReadingUm).toBe(40)
    expect(got.couldBeMissedUm).toBeCloseTo(3.24, 1)
    expect(got).toMatchObject({ closingDriftUm: 0, cautions: [] })
  })

  test('tells a closing reading that did not come back', async () => {
    const closed = [...eight, { angleDeg: 360, valueUm: 9 }]
    const of = (u: number) =>
      ask('run-out', { readings: closed, kind: 'radial', readingStandardUncertaintyUm: u })
    expect(await of(1)).toMatchObject({ closingDriftUm: 9, cautions: ['drift'] })
    expect(await of(4)).toMatchObject({ closingDriftUm: 9, cautions: [] })
    expect(await ask('run-out', { readings: eight, kind: 'radial' })).toMatchObject({
      closingDriftUm: null,
    })
  })

  test.each([12.7, 0.1, 25.4])('has an answer for readings that are all %s', async (valueUm) => {
    const alike = eight.map(({ angleDeg }) => ({ angleDeg, valueUm }))
    const got = await ask('run-out', { readings: alike, kind: 'radial' })
    expect(got).toMatchObject({ totalIndicatorReadingUm: 0, roundnessMinimumZoneUm: 0 })
    const planes = [0, 85, 170].map((positionMm) => ({ positionMm, readings: alike }))
    const straight = await ask('straightness', { planes, support: 'machine' })
    expect(straight.straightnessMinimumZoneUm).toBeLessThan(1e-9)
  })

  test('gives no direction by positions in a short arc, and refuses those in one place', async () => {
    const arc = [0, 20, 40, 60, 80].map((angleDeg, i) => ({ angleDeg, valueUm: (i * i) % 5 }))
    expect(await ask('run-out', { readings: arc, kind: 'radial' })).toMatchObject({
      eccentricityDirectionDeg: null,
      cautions: ['positions-bunched'],
    })
    for (const step of [1e-5, 1e-4, 0.1, 5]) {
      const readings = [0, 1, 2].map((i) => ({ angleDeg: i * step, valueUm: i }))
      expect(await refusals('run-out', { readings, kind: 'radial' })).toEqual(['readings'])
    }
  })

  test.each([
    [{ readings: [], kind: 'radial' }, ['readings']],
    [{ readings: eight.slice(0, 2), kind: 'radial' }, ['readings']],
    [{ kind: 'radial' }, ['readings']],
    [{ readings: eight }, ['kind']],
    [{ readings: eight, kind: 'axial' }, ['kind']],
    [{ readings: eight, kind: 'face' }, ['sweptDiameterMm']],
    [{ readings: eight, kind: 'face', sweptDiameterMm: 0 }, ['sweptDiameterMm']],
    [{ readings: eight, kind: 'radial', lobes: 3 }, ['lobes']],
    [
      { readings: eight, kind: 'radial', readingStandardUncertaintyUm: -1 },
      ['readingStandardUncertaintyUm'],
    ],
    [
      { readings: [...eight, { angleDeg: 'north', valueUm: 1 }], kind: 'radial' },
      ['readings[8].angleDeg'],
    ],
    [{ readings: [...eight, { angleDeg: 5 }], kind: 'radial' }, ['readings[8].valueUm']],
    [
      { readings: [...eight, { angleDeg: 5, valueUm: 1e300 }], kind: 'radial' },
      ['readings[8].valueUm'],
    ],
    [
      { readings: [0, 180, 360, 540].map((a) => ({ angleDeg: a, valueUm: a })), kind: 'radial' },
      ['readings'],
    ],
  ])('refuses %j beside the field', async (body, fields) => {
    expect(await refusals('run-out', body)).toEqual(fields)
  })

  test('is for who is signed in', async () => {
    const response = await postJson('/api/v1/calculate/run-out', { readings: eight })
    expect(response.status).toBe(401)
  })
})

describe('the calculator of straightness', () => {
  const plane = (positionMm: number, e: number) => ({
    positionMm,
    readings: eight.map(({ angleDeg }) => ({
      angleDeg,
      valueUm: 50 + e * Math.cos(((angleDeg - 90) * Math.PI) / 180),
    })),
  })
  const planes = [plane(0, 0), plane(100, 15), plane(200, 20), plane(300, 15), plane(400, 0)]

  test('finds a bow and where it is', async () => {
    const got = await ask('straightness', { planes, support: 'between-centres' })
    expect(got.largestTotalIndicatorReadingUm).toBeCloseTo(40, 9) // two of the eight lie on it
    expect(got.largestAtMm).toBe(200)
    expect(got.bowUm).toBeCloseTo(20, 9)
    expect(got.bowAtMm).toBe(200)
    expect(got.bowDirectionDeg).toBeCloseTo(90, 9)
    expect(got.straightnessMinimumZoneUm).toBeCloseTo(20, 5) // in one plane: its own height
    expect(got.cautions).toEqual([])
    expect(got.method).toBe('run-out/straightness 1')
  })

  test('says on vee-blocks what they mix', async () => {
    const body = { planes, support: 'vee-blocks', readingStandardUncertaintyUm: 1 }
    const got = await ask('straightness', body)
    expect(got.cautions).toEqual(['vee-blocks-mix-lobes-and-bow'])
    expect(got.expandedUncertaintyUm).toBeCloseTo(2 * Math.SQRT2, 12)
  })

  test.each([
    [{ planes: planes.slice(0, 2), support: 'machine' }, ['planes']],
    [{ planes }, ['support']],
    [{ planes: [...planes, plane(100, 1)], support: 'machine' }, ['planes[5].positionMm']],
    [
      { planes: [...planes, { positionMm: 500, readings: eight.slice(0, 2) }], support: 'machine' },
      ['planes[5].readings'],
    ],
  ])('refuses what it cannot answer', async (body, fields) => {
    expect(await refusals('straightness', body)).toEqual(fields)
  })
})

describe('the calculator of springs', () => {
  const rated = { springsCount: 6, freeLengthMm: 20, rateNPerMm: 3, workingLengthMm: 14 }

  test('gives load, pressure, travel and what changes them', async () => {
    const got = await ask('spring', {
      ...rated,
      solidLengthMm: 11,
      faceOuterDiameterMm: 61.6,
      faceInnerDiameterMm: 48.9,
      designLoadN: 120,
      endPlayMm: 0.25,
      removedUm: 50,
      lengthStandardUncertaintyMm: 0.1,
    })
    expect(got).toMatchObject({
      loadAtWorkingLengthN: 108,
      remainingTravelMm: 3,
      loadPerMmN: 18,
      loadChangeByEndPlayN: 4.5,
      shareOfDesignLoad: 0.9,
      cautions: [],
      method: 'spring/working-load 1',
    })
    expect(got.loadLostByLappingN).toBeCloseTo(0.9, 12) // 18 N per mm, 0.05 mm
    expect(got.facePressureMPa).toBeCloseTo(0.098, 3) // 108 N on 1102 mm2
    expect(got.standardUncertaintyN).toBeCloseTo(1.8 * Math.SQRT2, 12)
  })

  test('finds the rate from loads, and says where the line is none', async () => {
    const loads = [28, 25, 22, 19].map((lengthMm) => ({ lengthMm, loadN: 4.2 * (31.5 - lengthMm) }))
    const got = await ask('spring', { loads, workingLengthMm: 24 })
    expect(got.rateNPerMm).toBeCloseTo(4.2, 10)
    expect(got.freeLengthMm).toBeCloseTo(31.5, 9)
    expect(got.loadAtWorkingLengthN).toBeCloseTo(31.5, 9)
    const bent = [...loads, { lengthMm: 16, loadN: 110 }]
    const crooked = await ask('spring', { loads: bent, workingLengthMm: 24, freeLengthMm: 40 })
    expect(crooked.cautions).toEqual(['not-straight', 'free-length-differs'])
    const beyond = await ask('spring', { loads, workingLengthMm: 33 })
    expect(beyond).toMatchObject({ loadAtWorkingLengthN: 0, cautions: ['beyond-free-length'] })
    const thin = { ...rated, faceOuterDiameterMm: 50.000_01, faceInnerDiameterMm: 50 }
    expect((await ask('spring', thin)).facePressureMPa).toBeGreaterThan(1)
  })

  test.each([
    [{ workingLengthMm: 14, freeLengthMm: 20 }, ['loads']],
    [{ ...rated, loads: [{ lengthMm: 1, loadN: 1 }] }, ['rateNPerMm', 'loads']],
    [{ ...rated, freeLengthMm: null }, ['freeLengthMm']],
    [{ ...rated, workingLengthMm: 21 }, ['workingLengthMm']],
    [{ ...rated, solidLengthMm: 15 }, ['workingLengthMm']],
    [{ ...rated, solidLengthMm: 25 }, ['solidLengthMm']],
    [{ ...rated, faceOuterDiameterMm: 50 }, ['faceInnerDiameterMm']],
    [{ ...rated, faceOuterDiameterMm: 50, faceInnerDiameterMm: 60 }, ['faceInnerDiameterMm']],
    [{ ...rated, springsCount: 0 }, ['springsCount']],
    [{ ...rated, colour: 'red' }, ['colour']],
    [
      {
        workingLengthMm: 14,
        loads: [
          { lengthMm: 20, loadN: 9 },
          { lengthMm: 15, loadN: 5 },
        ],
      },
      ['loads'],
    ],
    ...[
      [100, 10, 100.05], // a free length of 20 m
      [0, 20 - 1e-8, 1e6],
    ].map(([first, lengthMm, loadN]) => [
      {
        workingLengthMm: 9,
        loads: [
          { lengthMm: 20, loadN: first },
          { lengthMm, loadN },
        ],
      },
      ['loads'],
    ]),
  ] as [object, string[]][])('refuses %j beside the field', async (body, fields) => {
    expect(await refusals('spring', body)).toEqual(fields)
  })
})

test('all three are described', async () => {
  const described = (await (await get('/api/v1/openapi.json')).json()) as {
    paths: Record<string, unknown>
    components: { schemas: Record<string, { properties: object }> }
  }
  for (const name of ['run-out', 'straightness', 'spring']) {
    expect(described.paths).toHaveProperty([`/api/v1/calculate/${name}`])
  }
  const told = Object.keys(described.components.schemas.apiRunOutAnswer?.properties ?? {})
  const got = await ask('run-out', {
    readings: eight,
    kind: 'face',
    sweptDiameterMm: 100,
    readingStandardUncertaintyUm: 1,
  })
  expect(told).toEqual(expect.arrayContaining(Object.keys(got)))
})
