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
    const run = computeDynamicRun(samples, null)
    expect(run?.channels).toMatchObject([
      { channel: 'massG', readingCount: 60, least: 10, last: 15.9 },
      { channel: 'faceTemperatureC', mean: 41, most: 42 },
    ])
    expect(run?.steadyMlPerH).toBeNull()
    expect((run?.leak?.steadyGPerS ?? 0) * 3600).toBeCloseTo(6, 9)
    expect(computeDynamicRun(samples, 500)?.steadyMlPerH).toBeCloseTo(12, 9)
  })

  it('reckons with the longest stretch of one clock, and says what it left out', () => {
    const set = samples.map((one, i) => (i < 20 ? one : { ...one, timeS: one.timeS - 3600 }))
    const run = computeDynamicRun(set, null)
    expect(run?.samples).toHaveLength(40)
    expect(run).toMatchObject({ leftOutCount: 20, cautions: ['clock-was-set'] })
  })

  it('flags a face that heats while nothing leaks, and none that leaks', () => {
    const hot = samples.map((one, i) => ({ ...one, faceTemperatureC: 40 + i, massG: 10 }))
    expect(computeDynamicRun(hot, null)?.cautions).toEqual(['no-leak-while-heating'])
    const wet = hot.map((one, i) => ({ ...one, massG: 10 + 0.1 * i }))
    expect(computeDynamicRun(wet, null)?.cautions).toEqual([])
  })

  it('draws the steady rate through the last weighing, beside the mass alone', () => {
    const run = computeDynamicRun(samples, null)!
    expect(runTrace(run, 'massG')?.fitted?.toValue).toBeCloseTo(15.9, 9)
    expect(runTrace(run, 'massG')?.fitted?.fromValue).toBeCloseTo(10, 9)
    expect(runTrace(run, 'faceTemperatureC')?.fitted).toBeNull()
    expect(runTrace(computeDynamicRun(samples.slice(0, 1), null)!, 'massG')).toBeNull()
  })
})
