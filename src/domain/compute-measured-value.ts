import { meanReading } from '../science/statistics/mean-reading.ts'
import { dialReadingUm } from '../science/uncertainty/dial-reading-um.ts'
import type { MeasuredAccuracy } from './measured-accuracy.ts'
import { type FigureKind, figureKindOf } from './measured-family.ts'
import { type MeasuredSource, measuredUncertainty } from './measured-uncertainty.ts'
import type { MeasuredValue } from './measured-value.ts'
import { methods } from './methods.ts'

export type ComputedMeasuredValue = Pick<MeasuredValue, 'valueUm' | 'uncertainty' | 'method'>

const methodOf: Readonly<Record<FigureKind, string>> = {
  roughness: methods.roughnessFigure,
  height: methods.heightFigure,
  dial: methods.dialFigure,
}

/**
 * The computed columns of a measured value, unrounded: the mean of its readings, reduced by the
 * cosine of a lever's angle, and its uncertainty.
 * @throws RangeError where the value did not pass its parsing
 */
export function computeMeasuredValue(
  source: MeasuredSource,
  accuracy: MeasuredAccuracy,
): ComputedMeasuredValue {
  const readingsUm = source.readings.map((one) => one.um)
  const kind = figureKindOf[source.characteristic]
  const leverAngleDeg = source.budgetInput.leverAngleDeg ?? undefined
  return {
    valueUm:
      kind === 'dial' ? dialReadingUm({ readingsUm, leverAngleDeg }) : meanReading(readingsUm).mean,
    uncertainty: measuredUncertainty(source, accuracy),
    method: methodOf[kind],
  }
}
