import type { DialPoint } from '../science/runout/dial-point.ts'
import { surveyPlaces } from './dial-survey.ts'
import { type Input, openFields } from './fields.ts'
import { parseDialPoints } from './parse-dial-points.ts'
import { runOutBounds } from './parse-run-out-request.ts'
import type { Parsed } from './parsed.ts'

/** What the calculator of straightness is asked: a turn at each of several planes of a shaft. */
export type StraightnessRequest = {
  readonly planes: readonly {
    readonly positionMm: number
    readonly readings: readonly DialPoint[]
  }[]
  readonly support: (typeof surveyPlaces)[number]
  readonly readingStandardUncertaintyUm: number | null
}

export const straightnessFields = ['planes', 'support', 'readingStandardUncertaintyUm'] as const

export const straightnessBounds = {
  planeCount: { min: 3, max: 200 },
  positionMm: { min: -1e5, max: 1e5 },
} as const

/** Reads a request for straightness. Planes lie at different places along the shaft. */
export function parseStraightnessRequest(input: Input): Parsed<StraightnessRequest> {
  const fields = openFields(input)
  fields.only(...straightnessFields)
  const { planeCount, positionMm } = straightnessBounds
  const seen = new Set<number>()
  const planes = fields.list('planes', planeCount).map((part) => {
    part.only('positionMm', 'readings')
    const before = fields.faults.length
    const position = part.decimal('positionMm', positionMm)
    if (fields.faults.length === before && seen.has(position)) {
      part.fault('positionMm', 'position-twice')
    }
    seen.add(position)
    return { positionMm: position, readings: parseDialPoints(part, 'readings') }
  })
  return fields.finish({
    planes,
    support: fields.choice('support', surveyPlaces),
    readingStandardUncertaintyUm: fields.optionalDecimal(
      'readingStandardUncertaintyUm',
      runOutBounds.uncertaintyUm,
    ),
  })
}
