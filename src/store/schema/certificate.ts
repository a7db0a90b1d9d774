import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { CertificateRecord } from '../../domain/certificate.ts'

export const certificate = sqliteTable('certificate', {
  id: integer('id').primaryKey(),
  number: text('number').notNull(),
  revision: integer('revision').notNull(),
  workOrderId: integer('work_order_id').notNull(),
  decisionId: integer('decision_id').notNull(),
  customerId: integer('customer_id').notNull(),
  record: text('record', { mode: 'json' }).$type<CertificateRecord>().notNull(),
  sha256: text('sha256').notNull(),
  issuedAt: text('issued_at').notNull(),
})
