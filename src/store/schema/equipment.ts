import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const equipment = sqliteTable('equipment', {
  id: integer('id').primaryKey(),
  customerId: integer('customer_id').notNull(),
  tag: text('tag').notNull(),
  description: text('description').notNull(),
  serviceFluid: text('service_fluid').notNull(),
})
