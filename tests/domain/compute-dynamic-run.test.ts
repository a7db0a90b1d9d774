import { describe, expect, it } from 'vitest'
import { computeDynamicRun } from '../../src/domain/compute-dynamic-run.ts'
import { runTrace } from '../../src/domain/run-trace.ts'

const samples = Array.from({ length: 60 }, (_, i) => ({
  timeS: 60 * i,
  massG: 10 + 0.1 * i,
  faceTemperatureC: 40 + (i % 3),
}))

describe('what the readings of a run say', () => {
  it('is nothing of none, and a summary of each channel that was read', () => {
    expect(computeDynamicRun([], null)).toBeNull()
    const run = computeDynamicRun([samples], null)
    expect(run?.channels).toMatchObject([
      { channel: 'massG', readingCount: 60, least: 10, last: 15.9 },
      { channel: 'faceTemperatureC', mean: 41, most: 42 },
    ])
    expect(run?.leak?.steadyMlPerH).toBeNull()
    expect((run?.leak?.steadyGPerS ?? 0) * 3600).toBeCloseTo(6, 9)
    expect(computeDynamicRun([samples], 500)?.leak?.steadyMlPerH).toBeCloseTo(12, 9)
  })

  it('brings late batches to their place, and joins channels sent in rows of their own', () => {
    const [first, second, third] = [samples.slice(0, 20), samples.slice(20, 40), samples.slice(40)]
    const late = computeDynamicRun([first, third, second], null)
    expect(late?.samples).toEqual(samples)
    expect(late?.oddities).toEqual({ late: 1 })
    const apart = [
      samples.map(({ timeS, massG }) => ({ timeS, massG })),
      samples.map(({ timeS, faceTemperatureC }) => ({ timeS, faceTemperatureC })),
    ]
    expect(computeDynamicRun(apart, null)?.samples).toEqual(samples)
    expect(computeDynamicRun([samples, samples], null)?.oddities).toEqual({
      late: 1,
      duplicate: 60,
    })
  })

  it('names what contradicts, what is missing and a clock that ran backwards', () => {
    const other = [{ timeS: 0, massG: 99 }]
    expect(computeDynamicRun([samples, other], null)?.oddities).toMatchObject({ conflict: 1 })
    expect(computeDynamicRun([samples, other], null)?.samples[0]?.massG).toBe(10)
    const gap = [...samples.slice(0, 20), ...samples.slice(40)]
    expect(computeDynamicRun([gap], null)?.oddities).toEqual({ gap: 1 })
    const set = [...samples.slice(30), ...samples.slice(0, 30)]
    expect(computeDynamicRun([set], null)).toMatchObject({
      oddities: { 'clock-back': 1 },
      cautions: ['clock-was-set'],
    })
  })

  it('has figures for a clock that was set after the first row, and for many readings', () => {
    const late = [
      { timeS: 0, massG: 1 },
      ...samples.map((one) => ({ ...one, timeS: one.timeS + 1.78e9 })),
    ]
    const told = computeDynamicRun([late], null)
    expect(told?.samples).toHaveLength(61)
    // The median of slopes takes no notice of one row.
    expect((told?.leak?.steadyGPerS ?? 0) * 3600).toBeCloseTo(6, 9)
    const many = Array.from({ length: 120_000 }, (_, i) => ({ timeS: i, massG: 0.002 * i }))
    expect(computeDynamicRun([many], null)?.leak?.steadyGPerS).toBeCloseTo(0.002, 9)
  })

  it('flags a face that heats while nothing leaks, and none that leaks', () => {
    const hot = samples.map((one, i) => ({ ...one, faceTemperatureC: 40 + i, massG: 10 }))
    expect(computeDynamicRun([hot], null)?.cautions).toEqual(['no-leak-while-heating'])
    const wet = hot.map((one, i) => ({ ...one, massG: 10 + 0.1 * i }))
    expect(computeDynamicRun([wet], null)?.cautions).toEqual([])
  })

  it('draws the steady rate through the last weighing, beside the mass alone', () => {
    const run = computeDynamicRun([samples], null)!
    expect(runTrace(run, 'massG')?.fitted?.toValue).toBeCloseTo(15.9, 9)
    expect(runTrace(run, 'massG')?.fitted?.fromValue).toBeCloseTo(10, 9)
    expect(runTrace(run, 'faceTemperatureC')?.fitted).toBeNull()
    expect(runTrace(computeDynamicRun([samples.slice(0, 1)], null)!, 'massG')).toBeNull()
  })
})
