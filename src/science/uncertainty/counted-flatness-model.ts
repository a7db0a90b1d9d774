import { requireRange } from '../check/require-range.ts'
import { bandHeightUm } from '../optics/band-height-um.ts'
import type { BudgetLine } from './budget-line.ts'
import { constantQuantity } from './constant-quantity.ts'
import {
  type CountedFlatnessBudgetInput,
  countedFlatnessBudget,
} from './counted-flatness-budget.ts'
import { errorQuantity } from './error-quantity.ts'
import type { MeasurementModel, ModelQuantity } from './measurement-model.ts'
import type { ThermalBow } from './thermal-bow-line.ts'

/** The budget's input, with what the height of a band comes from. */
export interface CountedFlatnessModelInput extends CountedFlatnessBudgetInput {
  readonly wavelengthNm: number
  /** 0 when absent. */
  readonly viewingAngleDeg?: number | undefined
}

/** A term of the expression with the quantities it names. */
interface Part {
  readonly term: string
  readonly quantities: readonly ModelQuantity[]
}

const name = 'countedFlatnessModel'

/** The counts of two directions err each for itself; both scatter by the one deviation stated. */
function bandsPart(input: CountedFlatnessModelInput, lines: readonly BudgetLine[]): Part {
  const bands = constantQuantity('bands', input.flatnessUm / input.bandHeightUm)
  const names = input.isSumOfTwoDirections ? ['firstReading', 'secondReading'] : ['reading']
  const scatterTerm = input.isSumOfTwoDirections ? 'sqrt(2) * repeatability' : 'repeatability'
  const reading = lines.filter((line) => line.source === 'reading')
  const scatter = lines.filter((line) => line.source === 'repeatability')
  const terms = ['bands', ...names, ...scatter.map(() => scatterTerm)]
  return {
    term: `(${terms.join(' + ')})`,
    quantities: [
      bands,
      ...reading.flatMap((line) => names.map((each) => errorQuantity(each, line))),
      ...scatter.map((line) => errorQuantity('repeatability', line)),
    ],
  }
}

function heightPart(input: CountedFlatnessModelInput, lines: readonly BudgetLine[]): Part {
  const { wavelengthNm, viewingAngleDeg = 0 } = input
  const nominal = constantQuantity('wavelengthNm', wavelengthNm)
  const line = lines.find((one) => one.source === 'wavelength')
  const viewing = lines.filter((one) => one.source === 'viewing-angle')
  return {
    term: [
      'wavelengthNm / (2000 * cos(viewingAngleRad))',
      ...viewing.map(() => '(1 + viewingExcess)'),
    ].join(' * '),
    quantities: [
      line === undefined
        ? nominal
        : { ...errorQuantity('wavelengthNm', line), value: wavelengthNm },
      constantQuantity('viewingAngleRad', (viewingAngleDeg * Math.PI) / 180),
      ...viewing.map((one) => errorQuantity('viewingExcess', one)),
    ],
  }
}

function bowPart(prefix: string, bow: ThermalBow | undefined, line?: BudgetLine): Part[] {
  if (bow === undefined || line === undefined) return []
  const of = (what: string) => `${prefix}${what}`
  return [
    {
      term: `1000 * ${of('ExpansionPerK')} * ${of('DeltaK')} * ${of('DiameterMm')}^2 / (8 * ${of('ThicknessMm')})`,
      quantities: [
        constantQuantity(of('ExpansionPerK'), bow.expansionPerK),
        errorQuantity(of('DeltaK'), line),
        constantQuantity(of('DiameterMm'), bow.diameterMm),
        constantQuantity(of('ThicknessMm'), bow.thicknessMm),
      ],
    },
  ]
}

/**
 * Gives the measurement model of a counted flatness reading, for propagation of distributions; its
 * result is in um.
 *
 * (bands + reading + repeatability) x wavelengthNm / (2000 cos viewingAngleRad)
 *   x (1 + viewingExcess) + opticalFlatUm + flatCalibrationUm + bow of part + bow of flat, as far
 *   as they are known
 *
 * @param input as countedFlatnessBudget, and wavelengthNm from 200 to 2000, viewingAngleDeg from 0
 *   to 80 (0 when absent), of which bandHeightUm is the height
 * @returns expression and quantities, whose standard uncertainties and distributions are those of
 *   the lines; a saddle has a reading for each direction
 * @throws RangeError outside these ranges, and where bandHeightUm is that of another lamp or angle
 * Validity: viewingExcess is the excess 1 / cos L - 1 of the largest angle, to either side of 0 as
 *   in the line. An angle drawn from 0 to L itself would only raise the figure, by a third of that
 *   excess for small L, and scatter it less: the model errs to the safe side. Repeatability from
 *   two or three counts has no standard deviation as a t distribution: go by the interval.
 * Source: as countedFlatnessBudget.
 * @example countedFlatnessModel({ bandHeightUm: 0.3, flatnessUm: 0.6, wavelengthNm: 600,
 *   isSumOfTwoDirections: false }).quantities.length // 4
 */
export function countedFlatnessModel(input: CountedFlatnessModelInput): MeasurementModel {
  const { budget } = countedFlatnessBudget(input)
  const heightUm = bandHeightUm(input)
  // Room for the rounding of a height that was stored and read again.
  const relative = { from: 1 - 1e-9, to: 1 + 1e-9 }
  requireRange(name, 'bandHeightUm over its lamp’s', input.bandHeightUm / heightUm, relative)
  const lineOf = (source: string) => budget.find((line) => line.source === source)
  const bands = bandsPart(input, budget)
  const height = heightPart(input, budget)
  const flat = [
    { source: 'optical-flat', term: 'opticalFlatUm' },
    { source: 'optical-flat-calibration', term: 'flatCalibrationUm' },
  ].flatMap(({ source, term }) =>
    budget
      .filter((line) => line.source === source)
      .map((line) => ({ term, quantities: [errorQuantity(term, line)] })),
  )
  const parts: readonly Part[] = [
    {
      term: `${bands.term} * ${height.term}`,
      quantities: [...bands.quantities, ...height.quantities],
    },
    ...flat,
    ...bowPart('part', input.thermal, lineOf('thermal-bow')),
    ...bowPart('flat', input.flatThermal, lineOf('thermal-bow-of-flat')),
  ]
  return {
    expression: parts.map((part) => part.term).join(' + '),
    quantities: parts.flatMap((part) => part.quantities),
  }
}
