import type { Distribution } from './distributions.ts'

/** An input quantity of a measurement model, in its own unit. */
export interface ModelQuantity {
  /** An identifier of the expression: a letter, then letters, digits and underscores. */
  readonly name: string
  readonly value: number
  readonly distribution: Distribution
  /** Of the stated distribution; 0 for a constant. */
  readonly standardUncertainty: number
  /** null stands for infinitely many, which JSON can't say. */
  readonly degreesOfFreedom: number | null
}

/**
 * How a result is computed from its quantities: kept with the result, so that its uncertainty can
 * be worked out again by propagation of distributions.
 */
export interface MeasurementModel {
  /** Arithmetic in the names of the quantities: + - * / ^ ( ) sqrt exp log sin cos tan; radians. */
  readonly expression: string
  readonly quantities: readonly ModelQuantity[]
}
