import { and, desc, eq } from 'drizzle-orm'
import type { Certificate } from '../domain/certificate.ts'
import { liftCertificateRecord } from '../domain/lift-certificate-record.ts'
import type { Store } from './open.ts'
import { certificate } from './schema/certificate.ts'

export function findRevision(
  store: Store,
  number: string,
  revision?: number,
): Certificate | undefined {
  const isAsked = revision === undefined ? undefined : eq(certificate.revision, revision)
  const found = store.db
    .select()
    .from(certificate)
    .where(and(eq(certificate.number, number), isAsked))
    .orderBy(desc(certificate.revision))
    .limit(1)
    .get()
  return found && { ...found, record: liftCertificateRecord(found.record) }
}
