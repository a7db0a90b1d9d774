import type { Instrument } from './instrument.ts'
import type { Component } from './seal.ts'
import type { UseException } from './use-exception.ts'

/** What records of the strip bench are read by. */
export type StripContext = {
  /** Of the seal that the order is for. */
  readonly components: readonly Component[]
  readonly instruments: readonly Instrument[]
  /** Of the order, by which an inspector allows an instrument; none where absent. */
  readonly exceptions?: readonly UseException[]
  /** Calendar day on which it is recorded, `2026-11-25`. */
  readonly today: string
}
