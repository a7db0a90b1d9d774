import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { FindingTerm, RadialPlace, Severity, SuspectedCause } from '../../domain/finding.ts'
import type { StripPart } from '../../domain/strip-part.ts'

export const finding = sqliteTable('finding', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  part: text('part').$type<StripPart>().notNull(),
  term: text('term').$type<FindingTerm>().notNull(),
  severity: text('severity').$type<Severity>(),
  fromHour: real('from_hour'),
  toHour: real('to_hour'),
  radialPlace: text('radial_place').$type<RadialPlace>(),
  isBeforeCleaning: integer('is_before_cleaning', { mode: 'boolean' }).notNull(),
  observation: text('observation').notNull(),
  suspectedCause: text('suspected_cause').$type<SuspectedCause>().notNull(),
  causeNote: text('cause_note').notNull(),
  photoSha256: text('photo_sha256'),
  replacesId: integer('replaces_id'),
  reason: text('reason').notNull(),
  recordedById: integer('recorded_by_id').notNull(),
  recordedByName: text('recorded_by_name').notNull(),
  recordedAt: text('recorded_at').notNull(),
})
