import type { CountedFlatness } from '../science/surface/counted-flatness.ts'
import {
  type CountedFlatnessBudgetInput,
  countedFlatnessBudget,
} from '../science/uncertainty/counted-flatness-budget.ts'
import { asUncertainty } from './as-uncertainty.ts'
import type { NewFlatnessReading } from './flatness.ts'
import { noFlatnessBudgetInput } from './flatness-budget-input.ts'
import { type Repeatability, repeatabilityOf } from './repeatability-of.ts'
import type { Uncertainty } from './uncertainty.ts'

/** What the budget of a reading depends on, beside the figures that were computed. */
export type FlatnessBudgetSource = Pick<
  NewFlatnessReading,
  'pattern' | 'directions' | 'budgetInput'
>

/**
 * The uncertainty of a counted flatness, with what it leaves out: whatever nobody stated.
 * @param flatToleranceUm of the optical flat by its papers; null where it is not known
 */
export function flatnessUncertainty(
  reading: FlatnessBudgetSource,
  counted: Pick<CountedFlatness, 'bandHeightUm' | 'flatnessUm'>,
  flatToleranceUm: number | null,
): Uncertainty {
  const stated = reading.budgetInput ?? noFlatnessBudgetInput
  const repeatability = repeatabilityOf(stated, reading)
  const toleranceUm = stated.opticalFlatToleranceUm ?? flatToleranceUm
  const input: CountedFlatnessBudgetInput = {
    bandHeightUm: counted.bandHeightUm,
    flatnessUm: counted.flatnessUm,
    isSumOfTwoDirections: reading.pattern === 'saddle',
    readingHalfWidthBands: stated.readingHalfWidthBands ?? undefined,
    repeatability: repeatability === null ? undefined : asBudgeted(repeatability),
    opticalFlatToleranceUm: toleranceUm ?? undefined,
    viewingAngleLimitDeg: stated.viewingAngleLimitDeg ?? undefined,
    thermal: stated.thermal ?? undefined,
  }
  const leftOut = [
    ...(repeatability === null ? ['repeatability'] : []),
    ...(toleranceUm === null ? ['optical-flat'] : []),
    ...(stated.viewingAngleLimitDeg === null ? ['viewing-angle'] : []),
    ...(stated.thermal === null ? ['thermal-bow'] : []),
    ...(stated.flatThermal === null ? ['flat-thermal-bow'] : []),
  ]
  return asUncertainty(countedFlatnessBudget(input).budget, leftOut, null)
}

/**
 * The budget divides by the root of two counts or more, and takes one degree of freedom less than
 * there are counts. One count of a scatter that n counts told is therefore handed in as n counts
 * of a scatter larger by the root of n.
 */
function asBudgeted({ standardDeviationBands, count, degreesOfFreedom }: Repeatability) {
  if (count > 1 || degreesOfFreedom === null) return { standardDeviationBands, count }
  const told = degreesOfFreedom + 1
  return { standardDeviationBands: standardDeviationBands * Math.sqrt(told), count: told }
}
