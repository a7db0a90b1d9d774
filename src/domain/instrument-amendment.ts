import type { Instrument } from './instrument.ts'

/** What can be completed or put right after registering. */
export const amendedNames = [
  'flatToleranceUm',
  'range',
  'resolution',
  'unit',
  'rangeFrom',
  'rangeTo',
  'resolutionStep',
  'largestError',
] as const

export type InstrumentNumbers = Pick<Instrument, (typeof amendedNames)[number]>

/** All of an instrument's numbers as they are known from a time on, and why. */
export type InstrumentAmendment = InstrumentNumbers & {
  readonly id: number
  readonly instrumentId: number
  readonly reason: string
  readonly byName: string
  readonly at: string
}

/** An amendment beside what stood until then. */
export type AmendedFrom = {
  readonly was: InstrumentNumbers
  readonly became: InstrumentAmendment
}
