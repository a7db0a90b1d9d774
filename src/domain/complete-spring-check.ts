import { answerSpring, type SpringCaution } from './answer-spring.ts'
import { lengthUse } from './length-use.ts'
import { methods } from './methods.ts'
import type { Component } from './seal.ts'
import type { NewSpringCheck, SpringCheck } from './spring-check.ts'
import { springLinePoints } from './spring-line-points.ts'
import { springOf } from './spring-of.ts'
import type { StripContext } from './strip-context.ts'

/** A check with all that is computed, before the store gives it an id, a name and a time. */
export type CompleteSpringCheck = Omit<
  SpringCheck,
  'id' | 'recordedById' | 'recordedByName' | 'recordedAt' | 'replacedById'
>

/** What the load follows from. */
export type SpringFigures = Omit<
  NewSpringCheck,
  'workOrderId' | 'condition' | 'instrumentId' | 'note' | 'replacesId' | 'reason'
>

/**
 * Adds to a parsed check what the springs press with, and the instrument as it stood on the day.
 * @throws RangeError where the check was not parsed in this context
 */
export function completeSpringCheck(
  check: NewSpringCheck,
  context: StripContext,
): CompleteSpringCheck {
  const { freeLength, workingLength, instrumentId } = check
  const read = lengthUse(instrumentId, [freeLength, workingLength], context)
  const { cautions, ...figures } = computeSpring(check, {
    components: context.components,
    lengthStandardUncertaintyUm: read?.standardUncertaintyUm ?? null,
  })
  return { ...check, ...figures, instrument: read?.use ?? null, method: methods.springLoad }
}

/**
 * What springs press with at their working length, on the smaller face of the seal, which is the
 * one that carries the load; null where nothing says how stiff they are.
 */
export function computeSpring(
  check: SpringFigures,
  by: {
    readonly components: readonly Component[]
    readonly lengthStandardUncertaintyUm: number | null
  },
) {
  const { freeLength, newLength, workingLength, solidLength } = check
  const setMm = newLength === null ? null : newLength.mm - freeLength.mm
  const travelMm = solidLength === null ? null : workingLength.mm - solidLength.mm
  const spring = springOf(check)
  if (spring === null) return { ...unknown, setMm, remainingTravelMm: travelMm }
  const line = springLinePoints(check)
  const of = by.lengthStandardUncertaintyUm
  const answer = answerSpring({
    ...nothingMore,
    springsCount: check.springsCount,
    freeLengthMm: freeLength.mm,
    loads: line,
    rateNPerMm: line.length > 0 ? null : spring.rateNPerMm,
    workingLengthMm: workingLength.mm,
    solidLengthMm: solidLength?.mm ?? null,
    ...landOf(by.components),
    lengthStandardUncertaintyMm: of === null ? null : of / 1000,
  })
  return {
    rateNPerMm: answer.rateNPerMm,
    workingLoadN: answer.loadAtWorkingLengthN,
    facePressureMPa: answer.facePressureMPa,
    remainingTravelMm: travelMm,
    loadPerMmN: answer.loadPerMmN,
    setMm,
    expandedUncertaintyN: answer.expandedUncertaintyN ?? null,
    coverageFactor: answer.coverageFactor ?? null,
    cautions: answer.cautions,
  }
}

const nothingMore = {
  designLoadN: null,
  endPlayMm: null,
  removedUm: null,
  rateStandardUncertaintyNPerMm: null,
} as const

const unknown = {
  rateNPerMm: null,
  workingLoadN: null,
  facePressureMPa: null,
  loadPerMmN: null,
  expandedUncertaintyN: null,
  coverageFactor: null,
  cautions: [] as readonly SpringCaution[],
} as const

/** The smaller land of the two faces, as far as the seal's record knows both its diameters. */
function landOf(components: readonly Component[]) {
  const lands = components.flatMap(({ kind, outerDiameterMm: outer, innerDiameterMm: inner }) => {
    const isFace = kind === 'rotating-face' || kind === 'stationary-seat'
    if (!isFace || outer === null || inner === null || inner >= outer) return []
    return [{ outer, inner, area: outer ** 2 - inner ** 2 }]
  })
  const [land] = lands.sort((a, b) => a.area - b.area)
  return { faceOuterDiameterMm: land?.outer ?? null, faceInnerDiameterMm: land?.inner ?? null }
}
