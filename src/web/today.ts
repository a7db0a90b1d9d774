import type { AppContext } from './context.ts'

/** The calendar day, in UTC as every time of the record. */
export function today(c: AppContext): string {
  return c.var.shop.now().toISOString().slice(0, 10)
}
