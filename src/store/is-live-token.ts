import { and, eq, isNull } from 'drizzle-orm'
import { apiToken } from './schema/api-token.ts'

export function isLive(userId: number, label: string) {
  return and(eq(apiToken.userId, userId), eq(apiToken.label, label), isNull(apiToken.revokedAt))
}
