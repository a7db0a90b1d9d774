import type { BudgetLine } from '../science/uncertainty/budget-line.ts'
import { dialReadingBudget } from '../science/uncertainty/dial-reading-budget.ts'
import { dialReadingModel } from '../science/uncertainty/dial-reading-model.ts'
import { heightBudget } from '../science/uncertainty/height-budget.ts'
import { heightModel } from '../science/uncertainty/height-model.ts'
import type { MeasurementModel } from '../science/uncertainty/measurement-model.ts'
import { roughnessBudget } from '../science/uncertainty/roughness-budget.ts'
import { roughnessModel } from '../science/uncertainty/roughness-model.ts'
import { asUncertainty } from './as-uncertainty.ts'
import type { MeasuredAccuracy } from './measured-accuracy.ts'
import { type FigureKind, figureKindOf } from './measured-family.ts'
import type { NewMeasuredValue } from './measured-value.ts'
import type { Uncertainty } from './uncertainty.ts'

/** What a measured value's figure depends on, beside its instrument. */
export type MeasuredSource = Pick<
  NewMeasuredValue,
  'characteristic' | 'readings' | 'budgetInput'
> & {
  /** Of the face that was measured; null where it is not known, or there is none. */
  readonly expansionPerK: number | null
}

/**
 * The uncertainty of a figure read with an instrument, with what it leaves out: whatever nobody
 * stated.
 */
export function measuredUncertainty(
  source: MeasuredSource,
  accuracy: MeasuredAccuracy,
): Uncertainty {
  const { standardUncertaintyUm, largestErrorUm, resolutionUm } = accuracy
  const kind = figureKindOf[source.characteristic]
  const { lines, model, leftOut } = budgetOf[kind](source, {
    readingsUm: source.readings.map((one) => one.um),
    resolutionUm,
    standardUncertaintyUm: standardUncertaintyUm ?? undefined,
    largestErrorUm: largestErrorUm ?? undefined,
  })
  const missing = [
    ...(source.readings.length > 1 ? [] : [kind === 'roughness' ? 'surface' : 'repeatability']),
    // How well an error is known does not tell how large it is.
    ...(largestErrorUm === null ? ['instrument'] : []),
    ...leftOut,
    // How far off its angle a lever stood is not asked.
    ...(kind === 'dial' && accuracy.isLever ? ['alignment'] : []),
  ]
  return asUncertainty(lines, missing, model)
}

type Read = {
  readonly readingsUm: readonly number[]
  readonly resolutionUm: number
  readonly standardUncertaintyUm: number | undefined
  readonly largestErrorUm: number | undefined
}
type Budget = {
  readonly lines: readonly BudgetLine[]
  readonly model: MeasurementModel
  readonly leftOut: readonly string[]
}

const budgetOf: Readonly<Record<FigureKind, (source: MeasuredSource, read: Read) => Budget>> = {
  roughness: (_, read) => ({
    lines: roughnessBudget(read),
    model: roughnessModel(read),
    leftOut: [],
  }),
  height: ofHeight,
  dial: ({ budgetInput }, read) => {
    const leverAngleDeg = budgetInput.leverAngleDeg ?? undefined
    const input = { ...read, isDifference: true, leverAngleDeg }
    return { lines: dialReadingBudget(input), model: dialReadingModel(input), leftOut: [] }
  },
}

/** How parallel anvils or table were is not asked. */
function ofHeight({ budgetInput, expansionPerK }: MeasuredSource, read: Read): Budget {
  const { settingStandardUncertaintyUm, temperatureHalfWidthK: halfWidthK } = budgetInput
  const isWarmthKnown = halfWidthK !== null && expansionPerK !== null
  const input = {
    ...read,
    settingStandardUncertaintyUm: settingStandardUncertaintyUm ?? undefined,
    temperature: isWarmthKnown ? { halfWidthK, expansionPerK } : undefined,
  }
  return {
    lines: heightBudget(input),
    model: heightModel(input),
    leftOut: [
      ...(settingStandardUncertaintyUm === null ? ['setting'] : []),
      ...(isWarmthKnown ? [] : ['temperature']),
      'alignment',
    ],
  }
}
