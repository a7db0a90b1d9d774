import { and, eq, isNull, sql } from 'drizzle-orm'
import type { User } from '../domain/user.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { apiToken } from './schema/api-token.ts'
import { user } from './schema/user.ts'
import { userColumns } from './user-columns.ts'

const userOfToken = prepared((store) =>
  store.db
    .select(userColumns)
    .from(apiToken)
    .innerJoin(user, eq(user.id, apiToken.userId))
    .where(
      and(
        eq(apiToken.tokenHash, sql.placeholder('tokenHash')),
        isNull(apiToken.revokedAt),
        eq(user.isActive, true),
      ),
    )
    .prepare(),
)

/** Undefined for an unknown or revoked token, and for an inactive user. */
export function findUserByToken(store: Store, tokenHash: string): User | undefined {
  return userOfToken(store).get({ tokenHash })
}
