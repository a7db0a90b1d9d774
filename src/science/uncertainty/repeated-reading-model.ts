import { meanReading } from '../statistics/mean-reading.ts'
import { constantQuantity } from './constant-quantity.ts'
import { errorQuantity } from './error-quantity.ts'
import type { MeasurementModel } from './measurement-model.ts'
import { type RepeatedReadingInput, repeatedReadingLines } from './repeated-reading-lines.ts'

/**
 * Gives the measurement model of a figure read with an instrument, as the part of the models that
 * have it in common; its result is in um.
 *
 * meanUm + resolutionUm + calibrationUm + instrumentUm, as far as they are known; the errors of
 * both readings, + first - second, where the figure is a difference
 *
 * @param input as repeatedReadingLines
 * @param isDifference true where each figure is the difference of two readings
 * @returns expression and quantities: the mean of two readings or more is distributed as t with
 *   n - 1 degrees of freedom, a single one is a constant
 * @throws RangeError as repeatedReadingLines
 * Validity: of two or three readings the t distribution has no standard deviation: go by the
 *   interval.
 * Source: as repeatedReadingLines; JCGM 101:2008, 6.4.9.
 * @example repeatedReadingModel({ readingsUm: [40], resolutionUm: 10 }, false).expression.length
 *   // 21
 */
export function repeatedReadingModel(
  input: RepeatedReadingInput,
  isDifference: boolean,
): MeasurementModel {
  const figure = { scatterSource: 'repeatability', isDifference, perUm: 1 } as const
  const lines = repeatedReadingLines(input, figure)
  const constant = constantQuantity('meanUm', meanReading(input.readingsUm).mean)
  const scatter = lines.find((line) => line.source === 'repeatability')
  const errors = lines.filter((line) => line !== scatter)
  const terms = errors.map(({ source }) =>
    isDifference ? ` + ${source}FirstUm - ${source}SecondUm` : ` + ${source}Um`,
  )
  return {
    expression: `meanUm${terms.join('')}`,
    quantities: [
      scatter === undefined
        ? constant
        : { ...errorQuantity('meanUm', scatter), value: constant.value },
      ...errors.flatMap((line) =>
        (isDifference ? ['First', 'Second'] : ['']).map((which) =>
          errorQuantity(`${line.source}${which}Um`, line),
        ),
      ),
    ],
  }
}
