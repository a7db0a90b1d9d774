import type { Actor } from '../domain/actor.ts'
import type { Decision } from '../domain/release.ts'
import type { User } from '../domain/user.ts'

/** Who decides, as it is printed: name, department and the instant of the act. */
export function decidedBy(
  user: User,
  actor: Actor,
): Pick<Decision, 'byId' | 'byName' | 'byDepartment' | 'at'> {
  return { byId: user.id, byName: user.displayName, byDepartment: user.department, at: actor.at }
}
