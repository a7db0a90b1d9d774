import { fittedLoadBudget } from '../science/spring/fitted-load-budget.ts'
import { type SpringRate, springRate } from '../science/spring/spring-rate.ts'
import { workingLoad } from '../science/spring/working-load.ts'
import { workingLoadBudget } from '../science/spring/working-load-budget.ts'
import { expandedResult } from '../science/uncertainty/expanded-result.ts'
import { methods } from './methods.ts'
import type { SpringRequest } from './parse-spring-request.ts'

export const springCautions = ['not-straight', 'free-length-differs', 'beyond-free-length'] as const
export type SpringCaution = (typeof springCautions)[number]

/** A residual above this share of the largest load is worth a word (common practice, no source). */
const largestShare = 0.05

/** What the springs press with at their working length. No record is made. */
export function answerSpring(request: SpringRequest) {
  const fitted = request.loads.length > 0 ? springRate(request.loads) : null
  const { rateNPerMm, freeLengthMm } = lineOf(request, fitted)
  const { springsCount, workingLengthMm, solidLengthMm, designLoadN } = request
  // Loads measured beyond the working length may come to nothing before it: then nothing presses.
  const isBeyond = workingLengthMm > freeLengthMm
  const springs = {
    springsCount,
    rateNPerMm,
    freeLengthMm: Math.max(freeLengthMm, workingLengthMm),
    workingLengthMm,
    solidLengthMm: solidLengthMm ?? undefined,
    faceOuterDiameterMm: request.faceOuterDiameterMm ?? undefined,
    faceInnerDiameterMm: request.faceInnerDiameterMm ?? undefined,
  }
  const load = workingLoad(springs)
  const { endPlayMm, removedUm } = request
  return {
    rateNPerMm,
    rateStandardUncertaintyNPerMm:
      fitted?.rateStandardUncertaintyNPerMm ?? request.rateStandardUncertaintyNPerMm,
    freeLengthMm,
    loadAtWorkingLengthN: load.loadN,
    facePressureMPa: load.facePressureMPa,
    remainingTravelMm: load.remainingTravelMm,
    loadPerMmN: load.loadPerMmN,
    loadChangeByEndPlayN: endPlayMm === null ? null : load.loadPerMmN * endPlayMm,
    loadLostByLappingN: removedUm === null ? null : (load.loadPerMmN * removedUm) / 1000,
    shareOfDesignLoad: designLoadN === null ? null : load.loadN / designLoadN,
    cautions: cautionsOf(request, fitted, isBeyond),
    ...uncertaintyOf(request, fitted, springs),
    method: methods.springLoad,
  }
}

function lineOf(request: SpringRequest, fitted: SpringRate | null) {
  if (fitted !== null) {
    return { rateNPerMm: fitted.rateNPerMm, freeLengthMm: fitted.fittedFreeLengthMm }
  }
  const { rateNPerMm, freeLengthMm } = request
  if (rateNPerMm === null || freeLengthMm === null) {
    throw new RangeError('answerSpring requires loads, or a rate with a free length')
  }
  return { rateNPerMm, freeLengthMm }
}

function cautionsOf(
  { freeLengthMm, loads }: SpringRequest,
  fitted: SpringRate | null,
  isBeyond: boolean,
): readonly SpringCaution[] {
  if (fitted === null) return []
  const largestLoad = Math.max(...loads.map((one) => one.loadN))
  const largestResidual = Math.max(...fitted.residualsN.map(Math.abs))
  const isStraight = largestResidual <= largestShare * largestLoad
  const differs =
    freeLengthMm !== null &&
    Math.abs(freeLengthMm - fitted.fittedFreeLengthMm) * fitted.rateNPerMm >
      largestShare * largestLoad
  return [
    ...(isStraight ? [] : (['not-straight'] as const)),
    ...(differs ? (['free-length-differs'] as const) : []),
    ...(isBeyond ? (['beyond-free-length'] as const) : []),
  ]
}

function uncertaintyOf(
  request: SpringRequest,
  fitted: SpringRate | null,
  springs: Parameters<typeof workingLoadBudget>[0],
) {
  const lengthStandardUncertaintyMm = request.lengthStandardUncertaintyMm ?? undefined
  const budget =
    fitted === null
      ? workingLoadBudget(springs, {
          rateStandardUncertaintyNPerMm: request.rateStandardUncertaintyNPerMm ?? undefined,
          lengthStandardUncertaintyMm,
        })
      : fittedLoadBudget(fitted, springs, { lengthStandardUncertaintyMm })
  if (budget.length === 0) return {}
  const { standardUncertainty, expandedUncertainty, coverageFactor } = expandedResult(budget)
  return {
    standardUncertaintyN: standardUncertainty,
    expandedUncertaintyN: expandedUncertainty,
    coverageFactor,
    budget,
  }
}
