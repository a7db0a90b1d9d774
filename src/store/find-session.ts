import { and, eq, gt, sql } from 'drizzle-orm'
import type { User } from '../domain/user.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { session } from './schema/session.ts'
import { user } from './schema/user.ts'
import { userColumns } from './user-columns.ts'

const userOfSession = prepared((store) =>
  store.db
    .select(userColumns)
    .from(session)
    .innerJoin(user, eq(user.id, session.userId))
    .where(
      and(
        eq(session.tokenHash, sql.placeholder('tokenHash')),
        gt(session.expiresAt, sql.placeholder('now')),
        eq(user.isActive, true),
      ),
    )
    .prepare(),
)

/**
 * Who is signed in; undefined for an unknown or ended session, and for an inactive user.
 * @param now RFC 3339 in UTC, as all times in the store: they compare as text
 */
export function findSession(store: Store, tokenHash: string, now: string): User | undefined {
  return userOfSession(store).get({ tokenHash, now })
}
