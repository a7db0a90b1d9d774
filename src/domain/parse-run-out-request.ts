import type { DialPoint } from '../science/runout/dial-point.ts'
import { type Input, openFields } from './fields.ts'
import { parseDialPoints } from './parse-dial-points.ts'
import type { Parsed } from './parsed.ts'

export const runOutKinds = ['radial', 'face'] as const

/** What the calculator of run-out is asked. */
export type RunOutRequest = {
  readonly readings: readonly DialPoint[]
  readonly kind: (typeof runOutKinds)[number]
  /** Of the circle that the tip ran on; known for a face. */
  readonly sweptDiameterMm: number | null
  readonly sealMeanDiameterMm: number | null
  readonly readingStandardUncertaintyUm: number | null
}

export const runOutFields = [
  'readings',
  'kind',
  'sweptDiameterMm',
  'sealMeanDiameterMm',
  'readingStandardUncertaintyUm',
] as const

export const runOutBounds = {
  diameterMm: { min: 0.1, max: 100_000 },
  uncertaintyUm: { min: 0, max: 1e6 },
} as const

/** Reads a request for run-out. The tilt of a face needs the diameter that was swept. */
export function parseRunOutRequest(input: Input): Parsed<RunOutRequest> {
  const fields = openFields(input)
  fields.only(...runOutFields)
  const { diameterMm, uncertaintyUm } = runOutBounds
  const readings = parseDialPoints(fields, 'readings')
  const kind = fields.choice('kind', runOutKinds)
  const name = 'sweptDiameterMm'
  return fields.finish({
    readings,
    kind,
    sweptDiameterMm:
      kind === 'face' ? fields.decimal(name, diameterMm) : fields.optionalDecimal(name, diameterMm),
    sealMeanDiameterMm: fields.optionalDecimal('sealMeanDiameterMm', diameterMm),
    readingStandardUncertaintyUm: fields.optionalDecimal(
      'readingStandardUncertaintyUm',
      uncertaintyUm,
    ),
  })
}
