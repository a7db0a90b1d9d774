import type { TwoPointInput } from '../science/leak/two-point-leak.ts'
import { type BudgetLine, budgetLine } from '../science/uncertainty/budget-line.ts'
import { twoPointLeakBudget } from '../science/uncertainty/two-point-leak-budget.ts'
import { asUncertainty } from './as-uncertainty.ts'
import type { StaticTestAccuracy } from './static-test-accuracy.ts'
import type { Uncertainty } from './uncertainty.ts'

export type StaticTestUncertainty = {
  readonly leakUncertainty: Uncertainty | null
  readonly dropUncertainty: Uncertainty | null
}

/**
 * The uncertainties of leak and drop; null where nothing is known to make one of: the time alone
 * tells nothing. An error that a gauge makes alike at both ends, such as that of its zero, falls
 * out of the difference; one that grows with the pressure scales the leak and belongs to the
 * volume. Taking both readings as independent is on the safe side for a gauge that repeats well.
 * The drop is the bare difference: what temperature does to it is no error of it.
 */
export function staticTestUncertainty(
  input: TwoPointInput,
  accuracy: StaticTestAccuracy,
): StaticTestUncertainty {
  return { leakUncertainty: ofLeak(input, accuracy), dropUncertainty: ofDrop(accuracy) }
}

function ofLeak(input: TwoPointInput, accuracy: StaticTestAccuracy): Uncertainty | null {
  const { volumeRelative, pressurePa, pressureStepPa, temperatureK, temperatureStepK } = accuracy
  const lines = twoPointLeakBudget(input, {
    volumeRelative: volumeRelative ?? undefined,
    pressurePa: pressurePa ?? undefined,
    resolutionPa: pressureStepPa ?? undefined,
    temperatureK: temperatureK ?? undefined,
    resolutionK: temperatureStepK ?? undefined,
    timeS: accuracy.timeS,
  })
  if (lines.every((line) => line.source === 'elapsed-time')) return null
  return asUncertainty(lines, leakLeftOut(accuracy), null)
}

/** Both readings of the gauge, each with its error and its step. */
function ofDrop(accuracy: StaticTestAccuracy): Uncertainty | null {
  const { pressurePa, pressureStepPa } = accuracy
  const lines = ends.flatMap(({ end, sensitivity }): BudgetLine[] => [
    ...(pressurePa === null
      ? []
      : [
          budgetLine({
            source: `${end}-pressure`,
            value: pressurePa,
            distribution: 'normal',
            sensitivity,
          }),
        ]),
    ...(pressureStepPa === null
      ? []
      : [
          budgetLine({
            source: `${end}-resolution`,
            value: pressureStepPa / Math.sqrt(12),
            distribution: 'rectangular',
            sensitivity,
          }),
        ]),
  ])
  return lines.length === 0 ? null : asUncertainty(lines, pressureLeftOut(accuracy), null)
}

function pressureLeftOut(accuracy: StaticTestAccuracy): readonly string[] {
  return accuracy.pressurePa === null ? ['pressure'] : []
}

/** Pressures are in Pa, the drop in kPa. */
const ends = [
  { end: 'start', sensitivity: 1e-3 },
  { end: 'end', sensitivity: -1e-3 },
] as const

function leakLeftOut(accuracy: StaticTestAccuracy): readonly string[] {
  return [
    ...(accuracy.volumeRelative === null ? ['volume'] : []),
    ...pressureLeftOut(accuracy),
    ...(accuracy.temperatureK === null ? ['temperature'] : []),
  ]
}
