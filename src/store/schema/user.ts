import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Role } from '../../domain/role.ts'

export const user = sqliteTable('user', {
  id: integer('id').primaryKey(),
  name: text('name').notNull(),
  displayName: text('display_name').notNull(),
  role: text('role').$type<Role>().notNull(),
  department: text('department').notNull(),
  customerId: integer('customer_id'),
  passwordHash: text('password_hash').notNull(),
  isActive: integer('is_active', { mode: 'boolean' }).notNull(),
  createdAt: text('created_at').notNull(),
})
