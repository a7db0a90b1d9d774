import { type CountedFlatness, countedFlatness } from '../science/surface/counted-flatness.ts'
import {
  countedFlatnessBudget,
  type FlatnessUncertainty,
} from '../science/uncertainty/counted-flatness-budget.ts'
import { methods } from './methods.ts'
import type { CountedFlatnessRequest } from './parse-counted-flatness-request.ts'
import { wavelengthOf } from './parse-lamp.ts'

export type CountedFlatnessAnswer = CountedFlatness &
  FlatnessUncertainty & { readonly method: string; readonly wavelengthNm: number }

/** Flatness from counted bands with its uncertainty; no record is made. */
export function answerCountedFlatness(request: CountedFlatnessRequest): CountedFlatnessAnswer {
  const { pattern, viewingAngleDeg, readings, ringCentre } = request
  const wavelengthNm = wavelengthOf(request)
  const result = countedFlatness({ pattern, readings, wavelengthNm, viewingAngleDeg, ringCentre })
  return {
    ...result,
    wavelengthNm,
    ...countedFlatnessBudget({
      ...request,
      wavelengthNm,
      bandHeightUm: result.bandHeightUm,
      flatnessUm: result.flatnessUm,
      isSumOfTwoDirections: pattern === 'saddle',
    }),
    method: methods.flatnessCounted,
  }
}
