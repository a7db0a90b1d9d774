import type { Fault } from './fault.ts'

/** The outcome of parsing what a user typed: a value, or one fault a field. */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] }
