import { type LampId, lamps } from '../science/optics/lamps.ts'
import type { CountedFlatness } from '../science/surface/counted-flatness.ts'
import { countedFlatnessBudget } from '../science/uncertainty/counted-flatness-budget.ts'
import { countedFlatnessModel } from '../science/uncertainty/counted-flatness-model.ts'
import { asUncertainty } from './as-uncertainty.ts'
import type { FlatAccuracy } from './flat-accuracy.ts'
import type { NewFlatnessReading } from './flatness.ts'
import { type FlatnessBudgetInput, noFlatnessBudgetInput } from './flatness-budget-input.ts'
import { type Repeatability, repeatabilityOf } from './repeatability-of.ts'
import type { Uncertainty } from './uncertainty.ts'

/** What the budget of a reading depends on, beside the figures that were computed. */
export type FlatnessBudgetSource = Pick<
  NewFlatnessReading,
  'pattern' | 'directions' | 'viewingAngleDeg' | 'budgetInput'
>

/** What the instruments bring along. */
export type FlatnessInstruments = FlatAccuracy & {
  /** The lamp's id in the lamp table. */
  readonly lampId: LampId
}

/** The uncertainty of a counted flatness, with what it leaves out: whatever nobody stated. */
export function flatnessUncertainty(
  reading: FlatnessBudgetSource,
  counted: Pick<CountedFlatness, 'bandHeightUm' | 'flatnessUm'>,
  instruments: FlatnessInstruments,
): Uncertainty {
  const lamp = lamps[instruments.lampId]
  const stated = reading.budgetInput ?? noFlatnessBudgetInput
  const repeatability = repeatabilityOf(stated, reading)
  // What is stated for a reading covers what its calibration leaves open.
  const isFlatStated = stated.opticalFlatToleranceUm !== null
  const toleranceUm = stated.opticalFlatToleranceUm ?? instruments.flatToleranceUm
  const input = {
    bandHeightUm: counted.bandHeightUm,
    flatnessUm: counted.flatnessUm,
    isSumOfTwoDirections: reading.pattern === 'saddle',
    readingHalfWidthBands: stated.readingHalfWidthBands ?? undefined,
    repeatability: repeatability === null ? undefined : asBudgeted(repeatability),
    opticalFlatToleranceUm: toleranceUm ?? undefined,
    opticalFlatStandardUncertaintyUm: isFlatStated
      ? undefined
      : (instruments.flatStandardUncertaintyUm ?? undefined),
    wavelengthNm: lamp.wavelengthNm,
    wavelengthHalfWidthNm: lamp.halfWidthNm,
    viewingAngleDeg: reading.viewingAngleDeg,
    viewingAngleLimitDeg: stated.viewingAngleLimitDeg ?? undefined,
    thermal: stated.thermal ?? undefined,
    flatThermal: stated.flatThermal ?? undefined,
  }
  const { budget } = countedFlatnessBudget(input)
  const leftOut = leftOutOf({ stated, repeatability, toleranceUm })
  return asUncertainty(budget, leftOut, countedFlatnessModel(input))
}

/** Without degrees of freedom the scatter is one of the method, known beforehand. */
function asBudgeted({ standardDeviationBands, count, degreesOfFreedom }: Repeatability) {
  const scatter = { standardDeviationBands, count }
  return degreesOfFreedom === null ? scatter : { ...scatter, degreesOfFreedom }
}

function leftOutOf(known: {
  readonly stated: FlatnessBudgetInput
  readonly repeatability: Repeatability | null
  readonly toleranceUm: number | null
}): readonly string[] {
  const { stated, repeatability, toleranceUm } = known
  return [
    ...(repeatability === null ? ['repeatability'] : []),
    ...(toleranceUm === null ? ['optical-flat'] : []),
    ...(stated.viewingAngleLimitDeg === null ? ['viewing-angle'] : []),
    ...(stated.thermal === null ? ['thermal-bow'] : []),
    ...(stated.flatThermal === null ? ['thermal-bow-of-flat'] : []),
  ]
}
