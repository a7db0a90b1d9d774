import type { TwoPointInput } from '../science/leak/two-point-leak.ts'
import { pressureDropBudget } from '../science/uncertainty/pressure-drop-budget.ts'
import { pressureDropModel } from '../science/uncertainty/pressure-drop-model.ts'
import { twoPointLeakBudget } from '../science/uncertainty/two-point-leak-budget.ts'
import { twoPointLeakModel } from '../science/uncertainty/two-point-leak-model.ts'
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
  return { leakUncertainty: ofLeak(input, accuracy), dropUncertainty: ofDrop(input, accuracy) }
}

function ofLeak(input: TwoPointInput, accuracy: StaticTestAccuracy): Uncertainty | null {
  const known = {
    volumeRelative: accuracy.volumeRelative ?? undefined,
    volumeErrorRelative: accuracy.volumeErrorRelative ?? undefined,
    pressurePa: accuracy.pressurePa ?? undefined,
    pressureErrorPa: accuracy.pressureErrorPa ?? undefined,
    resolutionPa: accuracy.pressureStepPa ?? undefined,
    temperatureK: accuracy.temperatureK ?? undefined,
    temperatureErrorK: accuracy.temperatureErrorK ?? undefined,
    resolutionK: accuracy.temperatureStepK ?? undefined,
    timeS: accuracy.timeS,
  }
  const lines = twoPointLeakBudget(input, known)
  if (lines.every((line) => line.source === 'elapsed-time')) return null
  return asUncertainty(lines, accuracy.leftOut, twoPointLeakModel(input, known))
}

/** Both readings of the gauge, each with its error and its step. */
function ofDrop({ start, end }: TwoPointInput, accuracy: StaticTestAccuracy): Uncertainty | null {
  const known = {
    startPressureKPaAbs: start.pressureKPaAbs,
    endPressureKPaAbs: end.pressureKPaAbs,
    pressurePa: accuracy.pressurePa ?? undefined,
    pressureErrorPa: accuracy.pressureErrorPa ?? undefined,
    resolutionPa: accuracy.pressureStepPa ?? undefined,
  }
  const lines = pressureDropBudget(known)
  if (lines.length === 0) return null
  const leftOut = accuracy.leftOut.filter((one) => ofGauge.includes(one))
  return asUncertainty(lines, leftOut, pressureDropModel(known))
}

const ofGauge: readonly string[] = ['pressure', 'pressure-error']
