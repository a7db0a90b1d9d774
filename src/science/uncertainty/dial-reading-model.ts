import { constantQuantity } from './constant-quantity.ts'
import { type DialReadingInput, dialReadingBudget } from './dial-reading-budget.ts'
import { errorQuantity } from './error-quantity.ts'
import type { MeasurementModel } from './measurement-model.ts'
import { repeatedReadingModel } from './repeated-reading-model.ts'

/**
 * Gives the measurement model of a figure read with an indicator, for propagation of distributions;
 * its result is in um.
 *
 * (meanUm + errors) x (cos leverAngleRad + alignment), as far as they are known
 *
 * @param input as dialReadingBudget
 * @returns expression and quantities, whose standard uncertainties and distributions are those of
 *   the lines; a difference has the errors of both its readings
 * @throws RangeError outside these ranges
 * Validity: as dialReadingBudget and repeatedReadingModel.
 * Source: as dialReadingBudget.
 * @example dialReadingModel({ readingsUm: [40], isDifference: true }).quantities.length // 2
 */
export function dialReadingModel(input: DialReadingInput): MeasurementModel {
  const alignment = dialReadingBudget(input).filter((line) => line.source === 'alignment')
  const figure = repeatedReadingModel(input, input.isDifference)
  const angleRad = ((input.leverAngleDeg ?? 0) * Math.PI) / 180
  const factors = ['cos(leverAngleRad)', ...alignment.map((line) => line.source)]
  return {
    expression: `(${figure.expression}) * (${factors.join(' + ')})`,
    quantities: [
      ...figure.quantities,
      constantQuantity('leverAngleRad', angleRad),
      ...alignment.map((line) => errorQuantity(line.source, line)),
    ],
  }
}
