import type { MassReading } from '../science/leak/set-aside-knocks.ts'
import { type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'

/** What the calculator of collected leakage is asked. */
export type CollectedRequest = {
  readonly readings: readonly MassReading[]
  readonly densityKgPerM3: number
}

export const collectedFields = ['readings', 'densityKgPerM3'] as const

export const collectedBounds = {
  readingCount: { min: 2, max: 20_000 },
  timeS: { min: -1e12, max: 1e12 },
  /** Between two weighings: from one to the next, and from the first to the last. */
  elapsedS: { min: 1e-3, max: 1e9 },
  massG: { min: -1e6, max: 1e6 },
  /** From a gas to mercury. */
  densityKgPerM3: { min: 0.01, max: 20_000 },
} as const

/** Reads a request for leakage that was collected and weighed; times rise. */
export function parseCollectedRequest(input: Input): Parsed<CollectedRequest> {
  const fields = openFields(input)
  fields.only(...collectedFields)
  const { readingCount, timeS, massG, densityKgPerM3 } = collectedBounds
  let first: number | null = null
  let before = Number.NEGATIVE_INFINITY
  const readings = fields.list('readings', readingCount).map((part) => {
    part.only('timeS', 'massG')
    const reading = { timeS: part.decimal('timeS', timeS), massG: part.decimal('massG', massG) }
    if (part.isGiven('timeS')) {
      first ??= reading.timeS
      const { min, max } = collectedBounds.elapsedS
      if (reading.timeS - before < min) part.fault('timeS', 'not-later')
      else if (reading.timeS - first > max)
        part.fault('timeS', 'above', { min: first, max: first + max })
    }
    before = reading.timeS
    return reading
  })
  return fields.finish({
    readings,
    densityKgPerM3: fields.decimal('densityKgPerM3', densityKgPerM3),
  })
}
