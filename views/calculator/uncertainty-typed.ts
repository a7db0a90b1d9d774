import type { UncertaintyAnswer } from '../../src/domain/answer-uncertainty.ts'
import type { Fault } from '../../src/domain/fault.ts'
import type { quantityFields } from '../../src/domain/parse-uncertainty-request.ts'
import type { MonteCarloResult } from '../../src/science/uncertainty/monte-carlo.ts'

/** One quantity of the form, every part a text. */
export type QuantityTyped = Readonly<Record<(typeof quantityFields)[number], string>>

export type UncertaintyTyped = {
  readonly quantities: readonly QuantityTyped[]
  readonly model: string
  readonly probability: string
  /** '' where no trials are asked for. */
  readonly trials: string
  readonly seed: string
}

export type UncertaintyQuestion = {
  readonly typed: UncertaintyTyped
  readonly faults: readonly Fault[]
  /** Null where something is faulty. */
  readonly answer: UncertaintyAnswer | null
  readonly trials: MonteCarloResult | null
}

export const blankQuantity: QuantityTyped = {
  name: '',
  value: '',
  distribution: 'normal',
  halfWidth: '',
  standardUncertainty: '',
  degreesOfFreedom: '',
}

/** What the page shows at first: the height of two light bands seen at a slant, in µm. */
export const exampleQuestion: UncertaintyTyped = {
  quantities: [
    {
      ...blankQuantity,
      name: 'bands',
      value: '2',
      distribution: 'rectangular',
      halfWidth: '0.25',
    },
    {
      ...blankQuantity,
      name: 'wavelength',
      value: '0.5875618',
      distribution: 'rectangular',
      halfWidth: '0.00005',
    },
    {
      ...blankQuantity,
      name: 'angle',
      value: '0.09',
      distribution: 'rectangular',
      halfWidth: '0.09',
    },
  ],
  model: 'bands * wavelength / (2 * cos(angle))',
  probability: '0.95',
  trials: '',
  seed: '1',
}
