import type { TwoPointInput } from '../leak/two-point-leak.ts'
import { exactFactors } from '../units/exact-factors.ts'
import type { BudgetLine } from './budget-line.ts'
import { constantQuantity } from './constant-quantity.ts'
import { errorQuantity } from './error-quantity.ts'
import type { TwoPointUncertainties } from './leak-uncertainty.ts'
import type { MeasurementModel, ModelQuantity } from './measurement-model.ts'
import { twoPointLeakBudget } from './two-point-leak-budget.ts'

/** A reading as a quantity, with the errors beside it: the instrument's own, the display's step. */
interface Reading {
  readonly term: string
  readonly quantities: readonly ModelQuantity[]
}

/** The value with the uncertainty of its line; without a line it counts as exact. */
function quantity(name: string, value: number, line?: BudgetLine, perUnit = 1): ModelQuantity {
  if (line === undefined) return constantQuantity(name, value)
  const error = errorQuantity(name, line)
  return { ...error, value, standardUncertainty: error.standardUncertainty * perUnit }
}

function reading(input: {
  readonly name: string
  readonly value: number
  readonly line: BudgetLine | undefined
  readonly errors: readonly { readonly name: string; readonly line: BudgetLine | undefined }[]
  /** Of the quantity's unit in one of the line's. */
  readonly perUnit: number
}): Reading {
  const { name, value, line, perUnit } = input
  const own = quantity(name, value, line, perUnit)
  const known = input.errors.filter((one) => one.line !== undefined)
  if (known.length === 0) return { term: name, quantities: [own] }
  const errors = known.map((one) => quantity(one.name, 0, one.line, perUnit))
  const term = `(${[own, ...errors].map((one) => one.name).join(' + ')})`
  return { term, quantities: [own, ...errors] }
}

/**
 * Gives the measurement model of a two-point leak, for propagation of distributions; its result is
 * in Pa m3/s.
 *
 * volumeL x referenceK / durationS x (startKPa / startK - endKPa / endK), volume and each reading
 * with its own error and that of its step where they are known
 *
 * @param input as twoPointLeak
 * @param uncertainties as twoPointLeakBudget; what is absent is a constant
 * @returns expression and quantities, whose standard uncertainties and distributions are those of
 *   the lines
 * @throws RangeError outside these ranges
 * Validity: as twoPointLeakBudget; temperatures in K, far from 0.
 * Source: as twoPointLeak.
 * @example twoPointLeakModel({ volumeL: 5, referenceTemperatureC: 20, start: { timeS: 0,
 *   pressureKPaAbs: 271.325, temperatureC: 21 }, end: { timeS: 600, pressureKPaAbs: 268.1,
 *   temperatureC: 20.5 } }, {}).quantities.length // 7
 */
export function twoPointLeakModel(
  input: TwoPointInput,
  uncertainties: TwoPointUncertainties,
): MeasurementModel {
  const lines = twoPointLeakBudget(input, uncertainties)
  const lineOf = (source: string) => lines.find((line) => line.source === source)
  const zeroK = exactFactors.celsiusZero.value
  const [startKPa, endKPa] = (['start', 'end'] as const).map((end) =>
    reading({
      name: `${end}KPa`,
      value: input[end].pressureKPaAbs,
      line: lineOf(`${end}-pressure`),
      errors: [
        { name: `${end}KPaError`, line: lineOf(`${end}-pressure-error`) },
        { name: `${end}KPaStep`, line: lineOf(`${end}-pressure-resolution`) },
      ],
      perUnit: 1e-3,
    }),
  ) as [Reading, Reading]
  const [startK, endK] = (['start', 'end'] as const).map((end) =>
    reading({
      name: `${end}K`,
      value: input[end].temperatureC + zeroK,
      line: lineOf(`${end}-temperature`),
      errors: [
        { name: `${end}KError`, line: lineOf(`${end}-temperature-error`) },
        { name: `${end}KStep`, line: lineOf(`${end}-temperature-resolution`) },
      ],
      perUnit: 1,
    }),
  ) as [Reading, Reading]
  // The lines of the volume are fractions of it.
  const volume = reading({
    name: 'volumeL',
    value: input.volumeL,
    line: lineOf('volume'),
    errors: [{ name: 'volumeLError', line: lineOf('volume-error') }],
    perUnit: input.volumeL,
  })
  const difference = `${startKPa.term} / ${startK.term} - ${endKPa.term} / ${endK.term}`
  return {
    expression: `${volume.term} * referenceK / durationS * (${difference})`,
    quantities: [
      ...volume.quantities,
      constantQuantity('referenceK', input.referenceTemperatureC + zeroK),
      quantity('durationS', input.end.timeS - input.start.timeS, lineOf('elapsed-time')),
      ...[startKPa, startK, endKPa, endK].flatMap((one) => one.quantities),
    ],
  }
}
