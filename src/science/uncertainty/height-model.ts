import { constantQuantity } from './constant-quantity.ts'
import { errorQuantity } from './error-quantity.ts'
import { type HeightInput, heightBudget } from './height-budget.ts'
import type { MeasurementModel } from './measurement-model.ts'
import { repeatedReadingModel } from './repeated-reading-model.ts'

/**
 * Gives the measurement model of a height, for propagation of distributions; its result is in um.
 *
 * meanUm + resolutionUm + instrumentUm - expansionPerK x temperatureK x meanUm + settingUm
 *   + alignmentUm, as far as they are known
 *
 * @param input as heightBudget
 * @returns expression and quantities, whose standard uncertainties and distributions are those of
 *   the lines
 * @throws RangeError outside these ranges
 * Validity: as heightBudget and repeatedReadingModel.
 * Source: as heightBudget.
 * @example heightModel({ readingsUm: [25000], settingStandardUncertaintyUm: 0.5 }).expression.length
 *   // 18
 */
export function heightModel(input: HeightInput): MeasurementModel {
  const lines = heightBudget(input)
  const lineOf = (source: string) => lines.filter((line) => line.source === source)
  const temperature = lineOf('temperature')
  const figure = repeatedReadingModel(input, false)
  const additive = [
    ...lineOf('setting').map((line) => errorQuantity('settingUm', line)),
    ...lineOf('alignment').map((line) => errorQuantity('alignmentUm', line)),
  ]
  const expansion = temperature.map(() => ' - expansionPerK * temperatureK * meanUm')
  return {
    expression: [
      `${figure.expression}${expansion.join('')}`,
      ...additive.map((one) => one.name),
    ].join(' + '),
    quantities: [
      ...figure.quantities,
      ...temperature.flatMap((line) => [
        constantQuantity('expansionPerK', input.temperature?.expansionPerK ?? Number.NaN),
        errorQuantity('temperatureK', line),
      ]),
      ...additive,
    ],
  }
}
