import { and, desc, eq } from 'drizzle-orm'
import type { Certificate } from '../domain/certificate.ts'
import { liftCertificateRecord } from '../domain/lift-certificate-record.ts'
import type { Store } from './open.ts'
import { certificate } from './schema/certificate.ts'

/** Newest first. */
export function listCertificates(
  store: Store,
  filter: { readonly customerId?: number; readonly workOrderId?: number } = {},
): Certificate[] {
  const { customerId, workOrderId } = filter
  return store.db
    .select()
    .from(certificate)
    .where(
      and(
        customerId === undefined ? undefined : eq(certificate.customerId, customerId),
        workOrderId === undefined ? undefined : eq(certificate.workOrderId, workOrderId),
      ),
    )
    .orderBy(desc(certificate.id))
    .all()
    .map((one) => ({ ...one, record: liftCertificateRecord(one.record) }))
}
