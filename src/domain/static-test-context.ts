import type { Instrument } from './instrument.ts'
import type { UseException } from './use-exception.ts'

/** What the parsing of a static test needs to know beside its input. */
export type StaticTestContext = {
  readonly instruments: readonly Instrument[]
  /** Of the order, by which an inspector allows an instrument; none where absent. */
  readonly exceptions?: readonly UseException[]
  /** When the seal came in, RFC 3339 in UTC: a test can't have begun before that day. */
  readonly receivedAt: string
  /** The instant of recording, RFC 3339 in UTC: a test can't have begun after it. */
  readonly now: string
}
