import type { Instrument } from './instrument.ts'

/** What the parsing of a static test needs to know beside its input. */
export type StaticTestContext = {
  readonly instruments: readonly Instrument[]
  /** The instant of recording, RFC 3339 in UTC: a test can't have begun after it. */
  readonly now: string
}
