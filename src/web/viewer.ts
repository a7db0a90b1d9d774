import type { Actor } from '../domain/actor.ts'
import type { User } from '../domain/user.ts'
import type { AppContext } from './context.ts'

/** Who is signed in; the guard lets nobody else reach a handler that asks. */
export function viewer(c: AppContext): User {
  const user = c.var.user
  if (user === undefined) throw new Error(`${c.req.path} asked for a viewer and is public`)
  return user
}

/** The viewer as the one who acts, now. */
export function actor(c: AppContext): Actor {
  const user = viewer(c)
  return { userId: user.id, name: user.displayName, at: c.var.shop.now().toISOString() }
}
