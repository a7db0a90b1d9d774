import type { Actor } from '../../domain/actor.ts'
import type { User } from '../../domain/user.ts'

/** A decision that is signed and not yet recorded. */
export type DecisionAsked = {
  readonly workOrderId: number
  readonly by: User
  readonly actor: Actor
  /** What the inspector wrote; '' where nothing was written. */
  readonly reason: string
  /** Of the evidence that was on the page. */
  readonly fingerprint: string
}
