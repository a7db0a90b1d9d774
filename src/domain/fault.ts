/**
 * What is wrong with one field, as data: the words stand in `views/words`.
 * `field` is the name in the form or in the JSON body (`readings[1].bands`).
 */
export type Fault = {
  readonly field: string
  readonly kind: FaultKind
  /** Bounds, names or values that the sentence needs. */
  readonly with?: Readonly<Record<string, string | number>>
}

export type FaultKind =
  | 'empty'
  | 'not-a-number'
  | 'not-a-whole-number'
  | 'not-a-date'
  | 'no-offset'
  | 'not-a-choice'
  | 'not-known'
  | 'too-long'
  | 'below'
  | 'above'
  | 'beyond-window'
  | 'unknown-field'
  | 'not-later'
  | 'too-few'
  | 'unreadable'
  | 'taken'
  | 'wrong-password'
  | 'too-short'
  | 'not-json'
  | 'inner-not-smaller'
  | 'below-absolute-zero'
  | 'wrong-instrument'
  | 'withdrawn-instrument'
  | 'overdue-instrument'
  | 'never-calibrated-instrument'
  | 'out-of-range-instrument'
  | 'no-such-fault'
  | 'not-text'
  | 'reason-needed'
  | 'already-replaced'
  | 'not-in-order'
  | 'one-of-two'
  | 'all-or-none'
  | 'not-here'
  | 'no-graduation'
  | 'not-a-name'
  | 'model-empty'
  | 'model-too-long'
  | 'model-too-deep'
  | 'model-unexpected'
  | 'model-not-closed'
  | 'model-not-a-function'
  | 'model-unknown-name'
  | 'model-not-finite'
  | 'limit-needed'
  | 'lower-not-below'
  | 'too-far-below-zero'
  | 'not-in-force'
