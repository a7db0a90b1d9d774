import { describe, expect, test } from 'vitest'
import { readReference } from '../../science/read-reference.ts'
import { askCalculator } from '../../support/ask-calculator.ts'
import { testApp } from '../../support/test-app.ts'

const shop = testApp()
const { get } = shop
const { ask, refusals } = askCalculator(shop)

describe('leakage that was collected', () => {
  const readings = Array.from({ length: 13 }, (_, i) => ({
    timeS: 300 * i,
    massG: 20 + (5.6 * 300 * i) / 3600,
  }))

  test('is told by mass and volume an hour', async () => {
    // E23 of the facts: 5.6 g/h at 1.004 g/cm3 are 5.58 mL/h.
    const got = await ask('leak/collected', { readings, densityKgPerM3: 1004 })
    expect(got.steadyGPerH).toBeCloseTo(5.6, 9)
    expect(got.steadyMlPerH).toBeCloseTo(5.58, 2)
    const [low, high] = got.confidence95GPerH as [number, number]
    expect(low).toBeLessThanOrEqual(got.steadyGPerH as number)
    expect(high).toBeGreaterThanOrEqual(got.steadyGPerH as number)
    expect(got).toMatchObject({ runIn: null, steadyFromS: 0, method: 'leak/collected 1' })
  })

  test('has its run-in taken out, as it was built in', async () => {
    type Case = { id: string; input: { t: number[]; m: number[] } }
    const { input } = readReference<Case[]>('leak/dynamic-cases.json').find(
      (one) => one.id === 'runin-1',
    ) as Case
    const built = input.t.map((timeS, i) => ({ timeS, massG: input.m[i] }))
    const got = await ask('leak/collected', { readings: built, densityKgPerM3: 998 })
    expect(got.steadyGPerH).toBeCloseTo(0.02 * 3600, 1)
    expect((got.runIn as { timeConstantS: number }).timeConstantS).toBeCloseTo(40, 1)
    expect((got.runIn as { extraG: number }).extraG).toBeCloseTo(12, 1)
  })

  test.each([
    [{ densityKgPerM3: 998 }, ['readings']],
    [{ readings, densityKgPerM3: 0 }, ['densityKgPerM3']],
    [{ readings }, ['densityKgPerM3']],
    [{ readings: readings.slice(0, 1), densityKgPerM3: 998 }, ['readings']],
    [{ readings: [readings[1], readings[0]], densityKgPerM3: 998 }, ['readings[1].timeS']],
    [{ readings: 'many', densityKgPerM3: 998 }, ['readings']],
    [
      { readings: [...readings, { timeS: 9999, massG: 'x' }], densityKgPerM3: 1 },
      ['readings[13].massG'],
    ],
    [{ readings, densityKgPerM3: 998, colour: 'red' }, ['colour']],
  ])('is refused beside the field: %#', async (body, fields) => {
    expect(await refusals('leak/collected', body)).toEqual(fields)
  })
})

describe('a leak in another unit', () => {
  test('comes with what it assumes', async () => {
    // E8 of the facts: 0.022992 Pa m3/s at 20 C are 12.686 sccm (0 C) and 13.615 mL/min.
    const from = { value: 0.022992, from: 'Pa-m3-per-s' }
    const sccm = await ask('leak/convert', { ...from, to: 'sccm-0C' })
    expect(sccm.value).toBeCloseTo(12.686, 3)
    expect(sccm.assumption).toContain('20 °C')
    expect(sccm).toMatchObject({ assumes: ['ideal-gas', 'at-reference-temperature'] })
    expect((await ask('leak/convert', { ...from, to: 'mL-per-min' })).value).toBeCloseTo(13.615, 3)
    const named = await ask('leak/convert', { value: 1, from: 'sccm-20C', to: 'sccm-0C' })
    expect(named.value).toBeCloseTo(0.93178, 5)
    expect(named.assumes).toEqual(['ideal-gas'])
    const air = await ask('leak/convert', { value: 1, from: 'g-per-h-air', to: 'mol-per-s' })
    expect(air.assumes).toEqual(['ideal-gas', 'as-air'])
  })

  test('is refused where a unit is not known', async () => {
    expect(await refusals('leak/convert', { value: 1, from: 'sccm', to: 'mol-per-s' })).toEqual([
      'from',
    ])
    expect(await refusals('leak/convert', {})).toEqual(['value', 'from', 'to'])
    const cold = { value: 1, from: 'mol-per-s', to: 'sccm-0C', referenceTemperatureC: -300 }
    expect(await refusals('leak/convert', cold)).toEqual(['referenceTemperatureC'])
  })
})

describe('the energy of gas under pressure', () => {
  test('is that of the worked example, with its caution', async () => {
    const got = await ask('stored-energy', { pressureKPaAbs: 271.325, volumeL: 28 })
    expect(got.energyJ).toBeCloseTo(4659, 0) // E24
    expect(got.tntKg).toBeCloseTo(0.00109, 5)
    expect(got.caution).toContain('site rules')
  })

  test.each([
    [{ volumeL: 28 }, ['pressureKPaAbs']],
    [{ pressureKPaAbs: 300, volumeL: 28, gamma: 1 }, ['gamma']],
    [{ pressureKPaAbs: 300, volumeL: 28, ambientKPaAbs: 0 }, ['ambientKPaAbs']],
    [{ pressureKPaAbs: 300, volumeL: -1 }, ['volumeL']],
  ])('is refused beside the field: %j', async (body, fields) => {
    expect(await refusals('stored-energy', body)).toEqual(fields)
  })
})

test('all three are described', async () => {
  const described = (await (await get('/api/v1/openapi.json')).json()) as {
    paths: Record<string, unknown>
  }
  for (const name of ['leak/collected', 'leak/convert', 'stored-energy']) {
    expect(described.paths).toHaveProperty([`/api/v1/calculate/${name}`])
  }
})
