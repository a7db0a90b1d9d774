import type { Actor } from '../domain/actor.ts'

/**
 * The id of the user who acts, for records that a person signs: the operator at the machine
 * measures and decides nothing.
 * @throws RangeError where the actor is no user
 */
export function requireUserId(actor: Actor, name: string): number {
  if (actor.userId !== null) return actor.userId
  throw new RangeError(`${name} requires an actor who is a user, got ${actor.name}`)
}
