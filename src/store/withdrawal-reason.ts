import { and, desc, eq } from 'drizzle-orm'
import type { Store } from './open.ts'
import { audit } from './schema/audit.ts'

/**
 * Why an instrument was taken out of use, as the trail keeps it; null where it is in use.
 * @param number painted on the instrument
 */
export function withdrawalReason(store: Store, number: string): string | null {
  const isIt = and(eq(audit.act, 'withdraw-instrument'), eq(audit.subject, `instrument ${number}`))
  const line = store.db.select().from(audit).where(isIt).orderBy(desc(audit.id)).limit(1).get()
  if (line === undefined) return null
  const { reason } = JSON.parse(line.detail) as { readonly reason: string }
  return reason
}
