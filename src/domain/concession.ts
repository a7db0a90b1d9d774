import type { Characteristic } from './characteristic.ts'
import type { ResultSubject } from './result-subject.ts'

/** A result outside its limit that the customer takes all the same; printed on the certificate. */
export type Concession = ResultSubject & {
  readonly id: number
  readonly workOrderId: number
  readonly characteristic: Characteristic
  readonly reason: string
  /** The customer's approval: number of a letter, an order or a message. */
  readonly customerReference: string
  readonly byId: number
  readonly byName: string
  readonly at: string
}
