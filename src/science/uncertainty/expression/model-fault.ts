export type ModelFaultKind =
  | 'empty'
  | 'too-long'
  | 'too-deep'
  | 'unexpected'
  | 'not-closed'
  | 'not-a-function'
  | 'unknown-name'
  | 'not-finite'

/**
 * What is wrong with a measurement model that somebody wrote: expected, so that it can be said
 * beside its field. `at` is the position in the expression from 0, or how many trials failed.
 */
export class ModelFault extends RangeError {
  readonly kind: ModelFaultKind
  readonly at: number

  constructor(kind: ModelFaultKind, at: number) {
    super(`measurement model: ${kind} at ${at}`)
    this.name = 'ModelFault'
    this.kind = kind
    this.at = at
  }
}
