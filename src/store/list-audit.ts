import { and, desc, eq, lt } from 'drizzle-orm'
import type { AuditEntry } from '../domain/audit.ts'
import { cursorId } from './cursor-id.ts'
import type { Store } from './open.ts'
import { audit } from './schema/audit.ts'

export type AuditFilter = {
  /** `W-2026-0042`, `user tess`, `instrument L-02`, `seal 7` … */
  readonly subject?: string
  /** `nextCursor` of the page before. */
  readonly cursor?: string
  readonly limit: number
}

/** Newest first, one page. */
export function listAudit(
  store: Store,
  filter: AuditFilter,
): { readonly items: AuditEntry[]; readonly nextCursor: string | null } {
  const { subject, cursor, limit } = filter
  if (!(Number.isInteger(limit) && limit >= 1 && limit <= 500)) {
    throw new RangeError(`listAudit requires limit from 1 to 500, got ${limit}`)
  }
  const found = store.db
    .select()
    .from(audit)
    .where(
      and(
        subject === undefined ? undefined : eq(audit.subject, subject),
        cursor === undefined ? undefined : lt(audit.id, cursorId(cursor)),
      ),
    )
    .orderBy(desc(audit.id))
    .limit(limit + 1)
    .all()
  const items = found.slice(0, limit)
  const last = items.at(-1)
  return { items, nextCursor: found.length > limit && last ? String(last.id) : null }
}
