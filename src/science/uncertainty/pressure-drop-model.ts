import { exactFactors } from '../units/exact-factors.ts'
import { constantQuantity } from './constant-quantity.ts'
import { errorQuantity } from './error-quantity.ts'
import type { MeasurementModel, ModelQuantity } from './measurement-model.ts'
import { type PressureDropInput, pressureDropBudget } from './pressure-drop-budget.ts'

/**
 * Gives the measurement model of a pressure drop, for propagation of distributions; its result is
 * in kPa.
 *
 * startKPa + errors / 1000 - (endKPa + errors / 1000) x startK / (startK + changeK), as far as they
 * are known
 *
 * @param input as pressureDropBudget; what is absent is a constant
 * @returns expression and quantities, whose standard uncertainties and distributions are those of
 *   the lines; errors in Pa and K
 * @throws RangeError outside these ranges
 * Validity: as pressureDropBudget.
 * Source: as pressureDropBudget.
 * @example pressureDropModel({ startPressureKPaAbs: 271, endPressureKPaAbs: 270 }).expression.length
 *   // 17
 */
export function pressureDropModel(input: PressureDropInput): MeasurementModel {
  const { startPressureKPaAbs, endPressureKPaAbs, temperature } = input
  const lines = pressureDropBudget(input)
  const errors: ModelQuantity[] = []
  const reading = (end: 'start' | 'end') => {
    const named = [
      { source: `${end}-pressure`, name: `${end}ErrorPa` },
      { source: `${end}-pressure-error`, name: `${end}GaugePa` },
      { source: `${end}-pressure-resolution`, name: `${end}StepPa` },
    ].flatMap(({ source, name }) =>
      lines.filter((line) => line.source === source).map((line) => errorQuantity(name, line)),
    )
    errors.push(...named)
    if (named.length === 0) return `${end}KPa`
    return `(${end}KPa + (${named.map((one) => one.name).join(' + ')}) / 1000)`
  }
  const bare = `${reading('start')} - ${reading('end')}`
  const change = lines.find((line) => line.source === 'temperature-change')
  const isUncompensated = change !== undefined && temperature !== undefined
  return {
    expression: isUncompensated ? `${bare} * startK / (startK + changeK)` : bare,
    quantities: [
      constantQuantity('startKPa', startPressureKPaAbs),
      constantQuantity('endKPa', endPressureKPaAbs),
      ...errors,
      ...(isUncompensated
        ? [
            constantQuantity(
              'startK',
              temperature.startTemperatureC + exactFactors.celsiusZero.value,
            ),
            errorQuantity('changeK', change),
          ]
        : []),
    ],
  }
}
