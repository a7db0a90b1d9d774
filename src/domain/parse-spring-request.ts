import type { SpringLoad } from '../science/spring/spring-rate.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { isSpringLine } from './is-spring-line.ts'
import type { Parsed } from './parsed.ts'
import { springBounds } from './spring-bounds.ts'

/** What the calculator of springs is asked. */
export type SpringRequest = {
  readonly springsCount: number
  /** Null: the one at which the loads come to nothing. */
  readonly freeLengthMm: number | null
  /** Of one spring; empty where its rate is stated. */
  readonly loads: readonly SpringLoad[]
  readonly rateNPerMm: number | null
  readonly workingLengthMm: number
  readonly solidLengthMm: number | null
  readonly faceOuterDiameterMm: number | null
  readonly faceInnerDiameterMm: number | null
  readonly designLoadN: number | null
  readonly endPlayMm: number | null
  readonly removedUm: number | null
  readonly lengthStandardUncertaintyMm: number | null
  readonly rateStandardUncertaintyNPerMm: number | null
}

export const springFields = [
  'springsCount',
  'freeLengthMm',
  'loads',
  'rateNPerMm',
  'workingLengthMm',
  'solidLengthMm',
  'faceOuterDiameterMm',
  'faceInnerDiameterMm',
  'designLoadN',
  'endPlayMm',
  'removedUm',
  'lengthStandardUncertaintyMm',
  'rateStandardUncertaintyNPerMm',
] as const

/** Reads a request for the load of springs: a stated rate, or loads at lengths. */
export function parseSpringRequest(input: Input): Parsed<SpringRequest> {
  const fields = openFields(input)
  fields.only(...springFields)
  const b = springBounds
  const areLoadsGiven = input.loads !== undefined && input.loads !== null && input.loads !== ''
  const isRateGiven = fields.isGiven('rateNPerMm')
  if (areLoadsGiven === isRateGiven) {
    fields.fault(isRateGiven ? 'rateNPerMm' : 'loads', 'one-of-two', {
      one: 'rateNPerMm',
      other: 'loads',
    })
  }
  const request = {
    springsCount: fields.optionalWhole('springsCount', b.springsCount) ?? 1,
    freeLengthMm: areLoadsGiven
      ? fields.optionalDecimal('freeLengthMm', b.lengthMm)
      : fields.decimal('freeLengthMm', b.lengthMm),
    loads: areLoadsGiven ? parseLoads(fields) : [],
    rateNPerMm: fields.optionalDecimal('rateNPerMm', b.rateNPerMm),
    workingLengthMm: fields.decimal('workingLengthMm', b.lengthMm),
    solidLengthMm: fields.optionalDecimal('solidLengthMm', b.lengthMm),
    ...parseFace(fields),
    designLoadN: fields.optionalDecimal('designLoadN', { ...b.loadN, min: 0.001 }),
    endPlayMm: fields.optionalDecimal('endPlayMm', b.smallMm),
    removedUm: fields.optionalDecimal('removedUm', b.removedUm),
    lengthStandardUncertaintyMm: fields.optionalDecimal(
      'lengthStandardUncertaintyMm',
      b.lengthUncertaintyMm,
    ),
    rateStandardUncertaintyNPerMm: fields.optionalDecimal(
      'rateStandardUncertaintyNPerMm',
      b.rateUncertaintyNPerMm,
    ),
  }
  checkLengths(fields, request)
  return fields.finish(request)
}

function parseLoads(fields: Fields): readonly SpringLoad[] {
  const before = fields.faults.length
  const loads = fields.list('loads', springBounds.loadCount).map((part) => {
    part.only('lengthMm', 'loadN')
    return {
      lengthMm: part.decimal('lengthMm', springBounds.lengthMm),
      loadN: part.decimal('loadN', springBounds.loadN),
    }
  })
  if (fields.faults.length === before && !isSpringLine(loads))
    fields.fault('loads', 'load-not-rising')
  return loads
}

function parseFace(fields: Fields) {
  const { diameterMm } = springBounds
  const outer = fields.optionalDecimal('faceOuterDiameterMm', diameterMm)
  const inner = fields.optionalDecimal('faceInnerDiameterMm', diameterMm)
  if ((outer === null) !== (inner === null)) {
    fields.fault(outer === null ? 'faceOuterDiameterMm' : 'faceInnerDiameterMm', 'empty')
  } else if (outer !== null && inner !== null && inner >= outer) {
    fields.fault('faceInnerDiameterMm', 'inner-not-smaller')
  }
  return { faceOuterDiameterMm: outer, faceInnerDiameterMm: inner }
}

/** Solid, working and free length in this order. */
function checkLengths(fields: Fields, request: SpringRequest): void {
  if (fields.faults.length > 0) return
  const { freeLengthMm, workingLengthMm, solidLengthMm } = request
  const max = freeLengthMm ?? springBounds.lengthMm.max
  const min = solidLengthMm ?? springBounds.lengthMm.min
  if (min > max) fields.fault('solidLengthMm', 'above', { min: springBounds.lengthMm.min, max })
  else if (workingLengthMm > max) fields.fault('workingLengthMm', 'above', { min, max })
  else if (workingLengthMm < min) fields.fault('workingLengthMm', 'below', { min, max })
}
